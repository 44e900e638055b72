"""Everything a chart shows, computed: order, axes, marks, intervals and the words beside them. No Qt.

A chart on screen and a saved image draw the same figure, so what they show can be tested as numbers here.
"""
