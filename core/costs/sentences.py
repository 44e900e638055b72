"""Sentences of what can be wrong with prices and costs."""

from typing import Final

SENTENCES: Final = {
    "prices.unreadable": "It cannot be read ({why}); check the path and your right to read it.",
    "prices.too_large": "The file has {megabytes} MB, too much for prices. Keep the dates that matter.",
    "prices.no_text": "The file holds no text. Save the prices as CSV: a date with time, and a price.",
    "prices.none": (
        "No prices by date were found. A row needs a date and time, such as 2026-01-31 16:30, and a price."
    ),
    "prices.row": 'This row holds no date with a price and was left out: "{text}".',
    "prices.dates": "The dates are not all written in one way. Write them as 2026-01-31 16:30.",
    "prices.some_offsets": (
        "Some dates state an offset from UTC and others do not. Write it with all of them or with none."
    ),
    "prices.step": (
        "The prices do not follow each other every minute to every day. Save half-hourly or hourly prices."
    ),
    "prices.uneven": (
        "The times do not lie on an even grid. Save prices that each hold for the same time, such as half an "
        "hour; if the clock changes in the file, name the zone first."
    ),
    "prices.too_long": "The first and the last date lie too far apart. Remove rows with a wrong date.",
    "prices.twice": "{count:time has|times have} two prices; the one further down counts. Remove the other.",
    "prices.holes": "{count} prices are missing; energy used then is not priced. Add the missing rows.",
}
