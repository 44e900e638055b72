"""Headings of log columns, in two dozen languages, turned into what a column holds and in which unit.

Rules: only words of the trade and of everyday language stand here; a heading is never matched as a
whole, so a new meter needs no new entry. Accents are dropped before the comparison.
"""

import re
import unicodedata
from functools import lru_cache

from attrs import frozen

from core.logs import words_further
from core.units import ENERGY_IN_WH, POWER_IN_W

#: units as they are written, in lower case, with the quantity they stand for and how the program writes them
UNITS: dict[str, tuple[str, str]] = {
    "w": ("power", "W"),
    **dict.fromkeys(("watt", "watts", "ワット"), ("power", "W")),
    "kw": ("power", "kW"),
    **dict.fromkeys(("kilowatt", "kilowatts"), ("power", "kW")),
    "mw": ("power", "mW"),
    "milliwatt": ("power", "mW"),
    "milliwatts": ("power", "mW"),
    "wh": ("energy", "Wh"),
    "w·h": ("energy", "Wh"),
    "w.h": ("energy", "Wh"),
    "watthour": ("energy", "Wh"),
    "watthours": ("energy", "Wh"),
    "wattstunden": ("energy", "Wh"),
    "kwh": ("energy", "kWh"),
    "kw·h": ("energy", "kWh"),
    "kw.h": ("energy", "kWh"),
    "mwh": ("energy", "mWh"),
    "ws": ("energy", "J"),
    "wmin": ("energy", "Wmin"),
    "j": ("energy", "J"),
    "joule": ("energy", "J"),
    "joules": ("energy", "J"),
    "kj": ("energy", "kJ"),
    "mj": ("energy", "MJ"),
    "va": ("apparent power", "VA"),
    "kva": ("apparent power", "kVA"),
    "var": ("reactive power", "var"),
    "kvar": ("reactive power", "kvar"),
    "v": ("voltage", "V"),
    "volt": ("voltage", "V"),
    "volts": ("voltage", "V"),
    "mv": ("voltage", "mV"),
    "a": ("current", "A"),
    "amp": ("current", "A"),
    "amps": ("current", "A"),
    "ampere": ("current", "A"),
    "ma": ("current", "mA"),
    "°c": ("temperature", "degC"),
    "℃": ("temperature", "degC"),
    "degc": ("temperature", "degC"),
    "celsius": ("temperature", "degC"),
    "c": ("temperature", "degC"),
    "°f": ("temperature", "degF"),
    "degf": ("temperature", "degF"),
    "hz": ("frequency", "Hz"),
    "%": ("share", "%"),
    "percent": ("share", "%"),
    "prozent": ("share", "%"),
    "s": ("time", "s"),
    "sec": ("time", "s"),
    "secs": ("time", "s"),
    "second": ("time", "s"),
    "seconds": ("time", "s"),
    "sekunden": ("time", "s"),
    "secondes": ("time", "s"),
    "segundos": ("time", "s"),
    "secondi": ("time", "s"),
    "秒": ("time", "s"),
    "ms": ("time", "ms"),
    **dict.fromkeys(("millis", "millisecond", "milliseconds", "millisekunden", "msec"), ("time", "ms")),
    **dict.fromkeys(("micros", "microsecond", "microseconds", "mikrosekunden", "usec"), ("time", "us")),
    "us": ("time", "us"),
    "µs": ("time", "us"),
    "ns": ("time", "ns"),
    "min": ("time", "min"),
    "mins": ("time", "min"),
    "minutes": ("time", "min"),
    "minuten": ("time", "min"),
    "分": ("time", "min"),
    "h": ("time", "h"),
    "hours": ("time", "h"),
    "hrs": ("time", "h"),
    **dict.fromkeys(("d", "days"), ("time", "d")),
    **words_further.UNITS,
}

#: parts of words that are long enough to be looked for inside a heading, by quantity; earlier ones win
PARTS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("power factor", ("power factor", "powerfactor", "leistungsfaktor", "facteur de puissance",
                        "factor de potencia",
                      "fattore di potenza", "arbeidsfactor", "wspolczynnik mocy", "fator de potencia",
                      "effektfaktor", "cos phi", "cosphi", "力率")),
    ("apparent power", ("apparent", "scheinleistung", "apparente", "aparente", "schijnbaar", "pozorna",
                        "skenbar",
                        "皮相")),
    ("reactive power", ("reactive", "blindleistung", "reattiva", "reativa", "reactiva", "blindvermogen",
                        "bierna",
                        "reaktiv", "無効")),
    ("cost", ("price", "kosten", "preis", "cout", "coste", "costo", "koszt", "custo", "kostnad", "料金",
                        "tariff",
              "tarif")),
    ("time", ("timestamp", "time stamp", "zeitstempel", "horodat", "marca de tiempo", "marca temporal",
              "data e ora", "data ora", "date heure", "date et heure", "datum zeit", "datum uhrzeit",
              "datum tijd",
              "datum/zeit", "fecha y hora", "fecha hora", "data/hora", "data i godzina", "data czas",
              "tidsstampel", "tidpunkt", "tijdstip", "zeitpunkt", "date time", "datetime", "recorded",
              "日時",
              "epoch", "unixtime")),
    ("elapsed", ("elapsed", "uptime", "laufzeit", "verstrichen", "ecoule", "transcurrido", "trascorso",
                        "verstreken",
                 "uplynelo", "czas trwania", "uplynal", "decorrido", "forfluten", "経過", "duration",
                 "runtime")),
    ("clock time", ("uhrzeit", "time of day", "tageszeit", "heure", "godzina", "時刻", "klockslag")),
    ("energy", ("energy", "energie", "energia", "energi", "consumption", "verbrauch", "consommation",
                        "consumo",
                "verbruik", "zuzycie", "forbrukning", "zahlerstand", "zaehlerstand", "zahler", "meterstand",
                "compteur", "contador", "contatore", "licznik", "matarstallning", "counter",
                "elektrische arbeit",
                "電力量", "積算", "watthour", "kilowatt hour", "kilowatthour", "cumulative", "import total",
                "totaliser", "totalizer")),
    ("power", ("power", "leistung", "puissance", "potencia", "potenza", "vermogen", "effekt", "wattage",
                        "watts",
               "電力", "ワット", "wirkleistung", "demand", "last in w")),
    ("voltage", ("voltage", "spannung", "tension", "tensione", "spanning", "napiecie", "tensao", "spanning",
                 "電圧", "voltaje")),
    ("current", ("current", "strom", "courant", "corriente", "corrente", "stroom", "natezenie", "amperage",
                 "電流", "strom")),
    ("temperature", ("temperatur", "temperature", "temperatuur", "温度", "室温", "気温")),
    ("frequency", ("frequen", "frekven", "czestotliwosc", "周波数")),
    ("device", ("device", "machine", "gerat", "geraet", "maschine", "appareil", "dispositivo", "macchina",
                        "maquina",
                "apparaat", "urzadzenie", "maszyna", "enhet", "apparat", "maskin", "機器", "装置",
                "デバイス", "機械",
                "printer", "drucker", "imprimante", "impresora", "stampante", "drukarka", "impressora",
                "skrivare",
                "equipo", "equipement")),
    ("channel", ("channel", "quantity", "kanal", "grosse", "messgrosse", "grandeur", "canal", "magnitud",
                        "magnitude",
                 "grandezza", "grootheid", "wielkosc", "grandeza", "storhet", "entity", "sensor",
                 "parameter",
                 "parametre", "metric", "measurement", "variable", "項目", "測定項目", "topic")),
    ("value", ("value", "reading", "messwert", "valeur", "valor", "valore", "waarde", "wartosc", "varde",
                        "測定値",
               "mesure", "lectura", "lettura", "leitura")),
    ("state", ("status", "zustand", "betriebszustand", "state", "etat", "estado", "stato", "toestand",
                        "tillstand",
               "状態", "phase")),
    ("unit", ("einheit", "unite", "unidad", "unita", "eenheid", "jednostka", "unidade", "単位")),
)  # fmt: skip
PARTS = tuple((q, (*parts, *words_further.PARTS.get(q, ()))) for q, parts in PARTS)

#: whole words, for those too short to be looked for inside others
TOKENS: dict[str, str] = {
    **dict.fromkeys(("time", "zeit", "temps", "tiempo", "tempo", "tijd", "czas", "tid", "時間", "when",
                         "ts", "unix",
                     "t", "stamp", "at", "wann"), "time"),
    **dict.fromkeys(("date", "datum", "fecha", "data", "dato", "日付", "day", "tag", "jour", "年月日"),
                         "date"),
    **dict.fromkeys(("hora", "ora", "tijdstip", "clock"), "clock time"),
    **dict.fromkeys(("p", "moc", "pwr", "load", "potencja"), "power"),
    **dict.fromkeys(("e", "total", "totale", "totaal", "suma", "gesamt", "index", "arbeit", "nrg", "acc"),
                         "energy"),
    **dict.fromkeys(("u", "volt", "urms", "vrms"), "voltage"),
    **dict.fromkeys(("i", "irms", "prad", "strom", "amp"), "current"),
    **dict.fromkeys(("temp", "tbed", "tnozzle"), "temperature"),
    **dict.fromkeys(("pf", "cos", "φ"), "power factor"),
    **dict.fromkeys(("s", "apparent"), "apparent power"),
    **dict.fromkeys(("q", "var"), "reactive power"),
    **dict.fromkeys(("f", "freq", "hz"), "frequency"),
    **dict.fromkeys(("name", "plug", "socket", "steckdose", "prise", "enchufe", "presa", "stekker",
                         "gniazdko",
                     "tomada", "uttag", "id", "meter", "who", "dev", "node", "outlet"), "device"),
    **dict.fromkeys(("item", "what", "field", "kind", "type", "key", "register"), "channel"),
    **dict.fromkeys(("val", "wert", "amount"), "value"),
    **dict.fromkeys(("unit", "units", "uom", "enhet"), "unit"),
    **dict.fromkeys(("state", "stan", "mode"), "state"),
    **dict.fromkeys(("cost", "eur", "usd", "gbp", "sek", "pln", "co2"), "cost"),
    **words_further.TOKENS,
    **dict.fromkeys(("row", "no", "nr", "lfd", "n", "#", "seq", "index"), "row number"),
}  # fmt: skip

PLACES: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("hot end", ("hot end", "hotend", "nozzle", "duse", "duese", "buse", "boquilla", "ugello", "dysza",
                        "bico",
                 "munstycke", "extruder", "ノズル", "mondstuk", "spuitmond")),
    ("room", ("room", "ambient", "raum", "umgebung", "ambiante", "ambiente", "sala", "kamer", "omgeving",
                        "pokoj",
              "otoczen", "rum", "omgivning", "室温", "environment", "気温", "air", "luft")),
    ("bed", ("bed", "bett", "heizbett", "plateau", "lit", "cama", "piatto", "piano", "stol", "mesa",
                        "badd", "ベッド",
             "plate", "platte")),
)  # fmt: skip

STATISTICS: dict[str, str] = {
    **dict.fromkeys(
        ("avg", "mean", "average", "mittel", "mittelwert", "moyenne", "media", "gemiddeld"), "mean"
    ),
    **dict.fromkeys(("srednia", "medel", "平均"), "mean"),
    **dict.fromkeys(
        ("min", "max", "minimum", "maximum", "peak", "std", "spitze", "最大", "最小", "limit"), "extreme"
    ),
}

PERIODS = (
    "today", "daily", "heute", "tages", "taglich", "jour", "hoy", "diario", "oggi", "giornalier",
    "vandaag", "dzis",
    "hoje", "idag", "本日", "month", "monat", "mois", "mes", "mese", "maand", "miesiac", "manad", "今月",
    "yesterday", "gestern", "hier", "ayer", "ieri", "gisteren", "wczoraj", "ontem", "igar", "昨日",
)  # fmt: skip
PAST = ("yesterday", "gestern", "ayer", "ieri", "gisteren", "wczoraj", "ontem", "igar", "昨日")

#: words that only qualify a quantity and are no machine's name
FILLERS = frozenset(
    {
        "active", "real", "true", "wirk", "aktive", "activa", "attiva", "ativa", "czynna", "aktiv",
        "actieve",
        "current", "now", "aktuelle", "actual", "momentan", "instant", "instantaneous", "used", "use",
        "total",
        "gesamt", "totale", "sum", "value", "reading", "in", "of", "the", "der", "die", "das", "de", "la",
        "le",
        "el", "du", "del", "des", "di", "do", "da", "en", "et", "y", "e", "i", "und", "and", "um", "an",
        "am",
        "at", "on", "for", "l1", "rms", "ac", "line", "mains", "import", "grid", "since", "per", "last",
        "plug",
        "meter", "elec", "electric", "electrical", "electricity", "electrique", "elettrica", "electrica",
        "elektrische", "elektrisch", "local", "utc", "gmt", "sensor", "log", "data", "measured", "mess",
        "output",
        "input", "draw", "drawn", "consumed", "有効", "消費", "現在",
    }
)  # fmt: skip


@frozen
class Meaning:
    """What a heading says.

    ``quantity`` is ``""`` where it says nothing; ``unit`` as `core.units` writes it or ``""``; ``rest`` is
    what is left when quantity, unit and fillers are taken away (in a wide log: the machine).
    """

    quantity: str
    unit: str = ""
    rest: str = ""
    place: str = ""
    statistic: str = ""
    period: str = ""


def plain(text: str) -> str:
    """`text` in lower case without accents, signs of separation as single spaces."""
    text = text.replace("ł", "l").replace("Ł", "l").replace("ß", "ss")
    bare = "".join(c for c in unicodedata.normalize("NFKD", text) if not unicodedata.combining(c))
    bare = unicodedata.normalize("NFKC", bare).casefold()
    return re.sub(r"[\s_\-–—.:#*]+", " ", bare).strip()


_BRACKET = re.compile(r"[\[(<{]\s*([^\[\](){}<>]{1,12}?)\s*[\])>}]")
_SLASH = re.compile(r"/\s*(°?[A-Za-zµ·.]{1,5})\s*$")
_IN = re.compile(r"\bin\s+(°?[A-Za-zµ·.]{1,8})\s*$")
_CAMEL = re.compile(r"(?<=[a-z][a-z])([kK]?[Ww]h|[kKm]?W)\s*$")
#: a unit before the rest of a heading, as in "kWh today"
_FIRST = re.compile(r"^(k?Wh?)\s+(?=\S)")
_TAIL = re.compile(r"(?:^|[\s_.,:\-])(°?[A-Za-zµ·]{1,12}|[квт]{2,3}(?:[·*-]?ч)?|℃|%)\s*$", re.IGNORECASE)


#: a unit of so many smaller ones, as registers of meters count: "0.1 W", "x 0.01 kWh"
_MULTIPLE = re.compile(r"^(?:[x×*]\s*)?(0[.,]0*1|10)\s*[x×*]?\s*([A-Za-z]{1,3})$")


def unit_of(text: str) -> tuple[str, str]:
    """(quantity, unit) of a written unit; empty when it is none.

    Case tells MJ from mJ only; a plug-in meter measures neither megawatts nor millijoules.
    """
    bare = text.strip().strip(".")
    counted = _MULTIPLE.match(bare)
    if counted is None:
        return UNITS.get(bare.casefold(), ("", ""))
    quantity, unit = UNITS.get(counted.group(2).casefold(), ("", ""))
    multiple = f"{counted.group(1).replace(',', '.')} {unit}"
    return (quantity, multiple) if multiple in POWER_IN_W or multiple in ENERGY_IN_WH else ("", "")


def _split_unit(heading: str) -> tuple[str, str, str]:
    """Heading without its unit, quantity by unit, unit."""
    for pattern in (_BRACKET, _SLASH, _IN, _CAMEL, _TAIL, _FIRST):
        for match in pattern.finditer(heading):
            quantity, unit = unit_of(match.group(1))
            if not unit or (pattern is _TAIL and unit in {"d"}):
                continue
            rest = (heading[: match.start()] + " " + heading[match.end() :]).strip()
            if (
                pattern is _TAIL
                and match.group(1).casefold() in {"a", "c", "h", "s", "v", "j", "min", "var"}
                and not (
                    match.group(1).isupper() or "_" in heading or not rest or match.group(1) in {"s", "h"}
                )
            ):
                continue
            return rest, quantity, unit
    return heading, "", ""


def _tokens(text: str) -> list[str]:
    spaced = re.sub(r"(?<=[a-zäöüéèà0-9])(?=[A-Z][a-z])", " ", text)
    return [t for t in re.split(r"[^\w#]+", plain(spaced)) if t]


@lru_cache(maxsize=4096)
def meaning(heading: str) -> Meaning:
    """What a column's heading says it holds.

    Examples
    --------
    >>> meaning("Leistung [W]")
    Meaning(quantity='power', unit='W', rest='', place='', statistic='', period='')
    >>> meaning("Alder kWh").rest
    'Alder'
    """
    bare, by_unit, unit = _split_unit(heading)
    text = plain(bare)
    tokens = _tokens(bare)
    statistic = next((STATISTICS[t] for t in tokens if t in STATISTICS), "")
    period = next((t for t in PERIODS if t in tokens or (len(t) > 4 and t in text)), "")
    place = next(
        (p for p, words in PLACES if any(w in tokens or (len(w) > 3 and w in text) for w in words)), ""
    )
    by_word, used = _by_word(text, tokens)
    quantity = _settle(by_word, by_unit, unit, place)
    if quantity == "energy" and period and not by_word and not by_unit:
        quantity = ""
    if by_unit and unit and quantity not in (by_unit, "elapsed", "time", "clock time", "energy per interval"):
        unit = unit if by_unit == quantity else ""
    rest = _rest(bare, used)
    return Meaning(quantity, unit, rest, place if quantity == "temperature" else "", statistic, period)


def _by_word(text: str, tokens: list[str]) -> tuple[str, str]:
    """Quantity told by words, and the word that told it."""
    for quantity, parts in PARTS:
        for part in parts:
            if part in text and (len(part) > 4 or not part.isascii() or part in tokens):
                return quantity, part
    for token in tokens:
        if token in TOKENS:
            return TOKENS[token], token
    return "", ""


def _settle(by_word: str, by_unit: str, unit: str, place: str) -> str:
    """One quantity out of what the words and what the unit say; a unit of measure speaks louder."""
    if by_unit in {
        "power",
        "energy",
        "apparent power",
        "reactive power",
        "voltage",
        "temperature",
        "frequency",
        "share",
    }:
        if by_unit == "power" and by_word in {"apparent power", "reactive power"}:
            return by_word
        if by_unit == "temperature" and unit == "degC" and by_word in {"power", "energy", "current"}:
            return by_word
        return by_unit
    if by_unit == "current":
        return "current" if by_word in {"", "current", "channel", "device", "value"} else by_word
    if by_unit == "time":
        return "elapsed" if by_word in {"", "elapsed", "time"} else by_word
    if not by_word and place:
        return "temperature"
    return by_word


def _rest(bare: str, used: str) -> str:
    words = [w for w in re.split(r"[\s_.,:;/|()\[\]]+|(?<=\w)-(?=\s)|(?<=\s)-", bare.strip()) if w]
    used_words = set(used.split())
    kept = []
    for word in words:
        flat = plain(word)
        if (
            flat in FILLERS
            or flat in STATISTICS
            or flat in used_words
            or (used and len(used) > 3 and used in flat)
        ):
            continue
        if not flat or unit_of(word)[1] in {"W", "kW", "mW", "Wh", "kWh"}:
            continue
        kept.append(word)
    return " ".join(kept)
