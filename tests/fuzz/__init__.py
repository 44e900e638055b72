"""Bytes of strangers, damaged at random or led by coverage: logs, studies, bundles, sheets, prices."""
