"""Cases: year, month, day, hour, minute and second in columns of their own."""

from collections.abc import Callable, Iterator

from tests.core.logs.corpus import Case, Load, Machine, Writer, load, stamp, table

Cell = Callable[[int], str]
RELATIVE = {"clock": "relative", "start": None}

#: headings in the ten languages that headings are read in
HEADS = {
    "English": "Year,Month,Day,Hour,Minute,Second,Power (W)",
    "German": "Jahr,Monat,Tag,Stunde,Minute,Sekunde,Leistung (W)",
    "French": "Année,Mois,Jour,Heure,Minute,Seconde,Puissance (W)",
    "Spanish": "Año,Mes,Día,Hora,Minuto,Segundo,Potencia (W)",
    "Italian": "Anno,Mese,Giorno,Ora,Minuto,Secondo,Potenza (W)",
    "Dutch": "Jaar,Maand,Dag,Uur,Minuut,Seconde,Vermogen (W)",
    "Polish": "Rok,Miesiąc,Dzień,Godzina,Minuta,Sekunda,Moc (W)",
    "Portuguese": "Ano,Mês,Dia,Hora,Minuto,Segundo,Potência (W)",
    "Swedish": "År,Månad,Dag,Timme,Minut,Sekund,Effekt (W)",
    "Japanese": "年,月,日,時,分,秒,電力 (W)",
    "letters": "y,m,d,h,m,s,W",
    "English plurals": "date_year,date_month,date_day,hours (UTC+0),minutes,seconds,watts",
}


def cases() -> Iterator[Case]:
    """All of them."""
    t, slow = load(), load(rows=240, step_s=60.0)
    alone = (Machine(t, has_counter=False),)
    w = Writer(t)

    def field(form: str, of: Load = t) -> Cell:
        return lambda i: stamp(of.time_s[i], form).lstrip("0") or "0"

    parts = tuple(map(field, ("%Y", "%m", "%d", "%H", "%M", "%S")))
    for language, head in HEADS.items():
        told = {"clock": "absolute"} if "UTC" in head else {}
        yield Case(
            f"six fields, {language}", table(t, head.split(","), (*parts, w.watts)).encode(), alone, **told
        )
    both = (Machine(t),)
    bare = table(t, (), (*parts, w.watts, w.kwh))
    yield Case("six fields with no headings", bare.encode(), both)
    turned = (*(parts[i] for i in (2, 1, 0, 3, 4, 5)), w.watts, w.kwh)
    yield Case("six fields with no headings, day first", table(t, (), turned, " ").encode(), both)
    five = tuple(field(f, slow) for f in ("%Y", "%m", "%d", "%H", "%M"))
    head = ("Year", "Month", "Day", "Hour", "Minute", "Power", "Energy kWh")
    v = Writer(slow)
    yield Case("five fields", table(slow, head, (*five, v.watts, v.kwh)).encode(), (Machine(slow),))
    yield Case(
        "a date and three fields",
        table(t, ("Datum", "Stunde", "Minute", "Sekunde", "W"),
              (lambda i: stamp(t.time_s[i], "%d.%m.%Y"), *parts[3:], w.watts), ";").encode(),
        alone,
    )  # fmt: skip
    yield Case(
        "three fields and a clock",
        table(t, ("Year", "Month", "Day", "Time", "W"),
              (*parts[:3], lambda i: stamp(t.time_s[i], "%H:%M:%S"), w.watts)).encode(),
        alone,
    )  # fmt: skip
    yield Case(
        "a month in words, a short year and halves of the day",
        table(t, ("Day", "Month", "Year", "Hour", "Minute", "Second", "AM/PM", "W"),
              (parts[2], lambda i: stamp(t.time_s[i], "%b"), field("%y"), field("%I"), *parts[4:],
               lambda i: stamp(t.time_s[i], "%p"), w.watts)).encode(),
        alone,
    )  # fmt: skip
    yield Case(
        "three fields without a date",
        table(t, ("hour", "minute", "second", "W"), (*parts[3:], w.watts)).encode(),
        alone,
        **RELATIVE,
    )
    fine = Load(t.time_s / 40, t.power_w, t.counter_wh)
    yield Case(
        "seconds with a fraction",
        table(fine, HEADS["English"].split(","),
              (*(field(f, fine) for f in ("%Y", "%m", "%d", "%H", "%M")),
               lambda i: f"{fine.time_s[i] % 60:.2f}", w.watts)).encode(),
        (Machine(fine, has_counter=False),),
    )  # fmt: skip
    yield Case(
        "an hour beside whole stamps",
        table(
            t, ("time", "year", "month", "day", "hour", "minute", "W"), (w.time, *parts[:5], w.watts)
        ).encode(),
        alone,
    )
    rows = table(t, HEADS["English"].split(","), (*parts, w.watts)).splitlines()
    rows[50] = rows[50].replace(",6,23,", ",13,23,")
    yield Case(
        "a month that does not exist",
        "\n".join(rows).encode(),
        (Machine(Load(*(c[[i for i in range(240) if i != 49]] for c in (t.time_s, t.power_w, t.counter_wh))),
                 has_counter=False),),
        refused=1,
        problems=("log.refused_rows",),
    )  # fmt: skip
