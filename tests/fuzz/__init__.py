"""Bytes of strangers, damaged at random or led by coverage: logs, study files, bundles, run sheets."""
