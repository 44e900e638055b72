"""Cases: headings in further languages beside columns that only they tell apart; units, groups of digits."""

from collections.abc import Callable, Iterator

import numpy as np

from core.logs import words_further
from core.logs.words import plain
from tests.core.logs.corpus import Case, Load, Machine, Writer, load, number, table

Cell = Callable[[int], str]
TRUTH = load()
W, C = Writer(TRUTH), Writer(TRUTH, decimal=",")

#: time, temperature, voltage, current, energy, power
_HEADS = {
    "Bulgarian": "Време;Температура;Напрежение;Ток;Енергия, kWh;Мощност",
    "Czech": "Čas;Teplota;Napětí;Proud;Spotřeba [kWh];Příkon",
    "Danish": "Tidsstempel;Temperatur;Spænding;Strøm;Forbrug (kWh);Effekt",
    "Finnish": "Aikaleima;Lämpötila;Jännite;Virta;Kulutus (kWh);Teho",
    "Greek": "Ώρα;Θερμοκρασία;Τάση;Ρεύμα;Κατανάλωση (kWh);Ισχύς",
    "Hungarian": "Idő;Hőmérséklet;Feszültség;Áramerősség;Fogyasztás (kWh);Teljesítmény",
    "Chinese": "时间;温度;电压;电流;用电量(kWh);功率",
    "Korean": "시간;온도;전압;전류;전력량(kWh);전력",
    "Norwegian": "Tidspunkt;Temperatur;Spenning;Strøm;Forbruk (kWh);Effekt",
    "Romanian": "Timp;Temperatura;Tensiune;Curent;Energie (kWh);Putere",
    "Russian": "Дата и время;Температура, °C;Напряжение, В;Ток, А;Энергия, кВт·ч;Мощность, Вт",
    "Slovak": "Čas;Teplota;Napätie;Prúd;Spotreba (kWh);Výkon",
    "Turkish": "Zaman;Sıcaklık;Gerilim;Akım;Tüketim (kWh);Güç",
    "Ukrainian": "Час;Температура;Напруга;Струм;Споживання, кВт·год;Потужність",
}


def cases() -> Iterator[Case]:
    """All of them."""
    for language, head in _HEADS.items():
        yield Case(f"headings in {language}", _beside(head.split(";")), (Machine(TRUTH),))
    lettered = table(
        TRUTH,
        ("Время", "Мощность", "Энергия"),
        (C.time, lambda i: f"{C.watts(i)} Вт", lambda i: f"{C.kwh(i)} кВт·ч"),
        ";",
    )
    yield Case("Russian units in the cells", lettered.encode(), (Machine(TRUTH),))
    yield from _groups()
    yield from _mega()
    yield from _unknown()


def _beside(head: list[str]) -> bytes:
    """Columns that look alike: what holds which is told by its heading alone."""

    def warm(i: int) -> str:
        return number(55.0 + 5.0 * np.sin(0.1 * i), 1, ",")

    def ampere(i: int) -> str:
        return number(TRUTH.power_w[i] / 183.7, 3, ",")

    return table(TRUTH, head, (C.time, warm, lambda _: "229,7", ampere, C.kwh, C.watts), ";").encode()


def _groups() -> Iterator[Case]:
    alone = (Machine(TRUTH, has_counter=False),)

    def indian(i: int) -> str:
        whole = f"{TRUTH.power_w[i] * 1000:.0f}"
        head, tail = whole[:-3], whole[-3:]
        return f"{head[:-2]},{head[-2:]},{tail}" if len(head) > 2 else f"{head},{tail}"

    data = table(TRUTH, ("time", "power [mW]"), (W.time, indian), ";").encode()
    yield Case("digits in Indian groups", data, alone)


def _mega() -> Iterator[Case]:
    def megawatts(i: int) -> str:
        return f"{TRUTH.power_w[i] / 1e6:.7f}"

    told = ("log.unit_mega",)
    data = table(TRUTH, ("time", "power [MW]"), (W.time, megawatts)).encode()
    yield Case("megawatts", data, (Machine(TRUTH, has_counter=False),), problems=told)

    def megawatt_hours(i: int) -> str:
        return f"{TRUTH.counter_wh[i] / 1e6:.7f}"

    data = table(TRUTH, ("time", "power [W]", "energy [MWh]"), (W.time, W.watts, megawatt_hours)).encode()
    yield Case("megawatt hours", data, (Machine(TRUTH),), problems=told)


def _unknown() -> Iterator[Case]:
    """A unit that is none of the trade: the figures stand as they are, and it is told."""
    shown = Load(TRUTH.time_s, np.round(TRUTH.power_w * 3.412, 1), TRUTH.counter_wh)
    data = table(shown, ("time", "power [BTU/h]"), (W.time, Writer(shown).watts)).encode()
    told = ("log.unit_unknown",)
    yield Case("a unit that is not known", data, (Machine(shown, has_counter=False),), problems=told)


def are_plain() -> bool:
    """Whether words are spelt as headings are compared with them."""
    words = (*words_further.TOKENS, *(w for parts in words_further.PARTS.values() for w in parts))
    return all(plain(w) == w for w in words)
