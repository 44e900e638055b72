"""Watts of a bed over a print, held and made cooler after the first layers, as a figure."""

from core.beds.quantities import SAVED_WH
from core.figures.compare import source_of
from core.figures.curve_values import Between, CurvesFigure, Trend
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.formatting import POINT, NumberLocale, number, with_interval, with_unit
from core.language import tr
from core.results.bed_answer import saving_note, saving_sentence
from core.results.cooler_beds import Saving, Savings, course
from core.study import Study
from core.units import SECONDS_PER_HOUR, SECONDS_PER_MINUTE

#: prints shorter than this are drawn in minutes [s]
_IN_MINUTES_S = 2.5 * SECONDS_PER_HOUR


def cooler_figure(
    savings: Savings, study: Study, machine_id: str, locale: NumberLocale = POINT
) -> CurvesFigure | None:
    """Watts of one machine's bed over a print, held and made cooler; None where its bed is not known."""
    saving, plan = savings.of(machine_id), savings.plan
    if saving is None:
        return None
    times_s, watts = course(saving.first.power_w, saving.later.power_w, plan, saving.tau_s)
    in_minutes = plan.print_s < _IN_MINUTES_S
    unit_s = SECONDS_PER_MINUTE if in_minutes else SECONDS_PER_HOUR
    x = tuple(t / unit_s for t in times_s)
    held = (saving.first.power_w,) * len(x)
    top = axis_end((saving.first.power_w, saving.later.power_w), margin=0.22)
    price, currency = study.costs.tariff.price_per_kwh, study.costs.tariff.currency
    return CurvesFigure(
        headline=saving_sentence(savings, machine_id, locale, price, currency),
        conditions=_cooler_conditions(savings, saving, locale),
        source=source_of(study),
        x=Scale(tr("Time from the end of warm-up"), "min" if in_minutes else "h", 0.0, x[-1] or 1.0, locale),
        y=Scale(tr("Watts of the bed"), "W", 0.0, top, locale),
        trends=(
            Trend(
                (x[0], x[-1]),
                (held[0], held[0]),
                saving.slot,
                _held_text(savings, True, locale),
                is_dashed=True,
            ),
            Trend(x, watts, saving.slot, _held_text(savings, False, locale)),
        ),
        between=Between(x, held, watts, saving.slot, _saved_text(saving, locale)),
        facts=(saving_sentence(savings, machine_id, locale, price, currency),),
    )


def _held_text(savings: Savings, is_first: bool, locale: NumberLocale) -> str:
    celsius = savings.plan.first_c if is_first else savings.plan.later_c
    return f"{number(celsius, 0, locale)} °C"


def _saved_text(saving: Saving, locale: NumberLocale) -> str:
    if saving.saved_wh.value <= 0:
        return ""
    text = with_interval(saving.saved_wh.value, saving.saved_wh.u95, SAVED_WH, locale)
    return tr("saved: {energy}", energy=with_unit(text, SAVED_WH))


def _cooler_conditions(savings: Savings, saving: Saving, locale: NumberLocale) -> str:
    """Room, cooling time, and how far the watts rest on holds."""
    parts = [
        tr("room {celsius} °C", celsius=number(savings.plan.room_c, 1, locale)),
        tr(
            "{minutes} min of cooling without heat",
            minutes=number(saving.bed.cooling_s / SECONDS_PER_MINUTE, 1, locale),
        ),
        tr("warm-up not counted"),
    ]
    note = saving_note(savings, saving.machine_id)
    return f"{saving.name}: {'; '.join(parts)}.{' ' + note if note else ''}"
