"""Names of months as stamps write them, whole, declined or cut short, in the languages that logs come in.

Rules: accents are dropped, as everywhere that words are compared. Where two languages give one word to two
months, it has that of the language with more loggers.
"""

from core.logs.words import plain

_NAMES = (
    "jan januar january janvier enero gennaio januari styczen stycznia janeiro sty ene gen janv "
    "gener ianuarie ian januara leden ledna ocak oca tammikuu tammikuuta tammi янв январь января "
    "януари січень січня січ ιανουαριος ιανουαριου ιαν",
    "feb februar february fevrier febrero febbraio februari luty lutego fevereiro lut fev fevr "
    "febrer februarie februara unor unora subat sub helmikuu helmikuuta helmi фев февр февраль "
    "февраля февруари лютий лютого лют φεβρουαριος φεβρουαριου φεβ",
    "mar marz maerz march mars marzo maart marzec marca marco mrz mrt mrz. marts marc martie "
    "marcius brezen brezna mart maaliskuu maaliskuuta maalis мар март марта березень березня бер "
    "μαρτιος μαρτιου μαρ",
    "apr april avril abril aprile kwiecien kwietnia kwi avr abr aprilie aprilis aprila duben "
    "dubna nisan nis huhtikuu huhtikuuta huhti апр апрель апреля април квітень квітня квіт "
    "απριλιος απριλιου απρ",
    "may mai mayo maggio mei maj maja maio mag maig majus kveten kvetna mayis toukokuu toukokuuta "
    "touko май мая травень травня трав μαιος μαιου μαι",
    "jun juni june juin junio giugno czerwiec czerwca junho cze giu juny iunie iun junius juna "
    "cerven cervna haziran haz kesakuu kesakuuta kesa июн июнь июня юни червень червня черв "
    "ιουνιος ιουνιου ιουν",
    "jul juli july juillet julio luglio lipiec lipca julho lip lug juil juliol iulie iul julius "
    "jula cervenec cervence temmuz tem heinakuu heinakuuta heina июл июль июля юли липень липня "
    "лип ιουλιος ιουλιου ιουλ",
    "aug august aout agosto augustus sierpien sierpnia augusti sie ago aou agost augusztus "
    "augusta srpen srpna agustos agu elokuu elokuuta elo авг август августа серпень серпня серп "
    "αυγουστος αυγουστου αυγ",
    "sep sept september septembre septiembre settembre wrzesien wrzesnia setembro wrz set "
    "setembre szeptember szept septembrie septembra zari eylul eyl syyskuu syyskuuta syys сен "
    "сент сентябрь сентября септември вересень вересня вер σεπτεμβριος σεπτεμβριου σεπ",
    "oct okt october oktober octobre octubre ottobre pazdziernik pazdziernika outubro paz ott out "
    "octombrie oktobra rijen rijna ekim eki lokakuu lokakuuta loka окт октябрь октября октомври "
    "жовтень жовтня жовт οκτωβριος οκτωβριου οκτ",
    "nov november novembre noviembre listopad listopada novembro lis noiembrie noi novembra "
    "listopadu kasım kas marraskuu marraskuuta marras ноя нояб ноябрь ноября ноември листопад "
    "листопада лист νοεμβριος νοεμβριου νοε",
    "dec dez december dezember decembre diciembre dicembre grudzien grudnia dezembro gru dic "
    "desember des desembre decembrie decembra prosinec prosince aralık ara joulukuu joulukuuta "
    "joulu дек декабрь декабря декември грудень грудня груд δεκεμβριος δεκεμβριου δεκ",
)
MONTHS = {plain(word): i + 1 for i, words in enumerate(_NAMES) for word in words.split()}
