"""Words of headings and letters of units in further languages, for `core.logs.words`.

Bulgarian, Czech, Danish, Finnish, Greek, Hungarian, Chinese, Korean, Norwegian, Romanian, Russian, Slovak,
Turkish and Ukrainian; spelt as `core.logs.words.plain` has them.
"""

_PARTS = {
    "power factor": "коэффициент мощности,фактор на мощността,коефіцієнт потужності,ucinik,tehokerroin,"
    "guc faktoru,teljesitmenytenyezo,功率因数,功率因數,역률",
    "apparent power": "полная мощность,повна потужність,zdanliv,tilsyneladende,tilsynelatende,naennaisteho,"
    "gorunur guc,视在,視在,피상",
    "reactive power": "реактив,jalov,loisteho,reaktif,无功,無功,무효",
    "time": "отметка времени,дата и время,дата и час,дата та час,casove razitko,casova peciatka,datum a cas,"
    "tidsstempel,aikaleima,zaman damgası,时间戳,時間戳,일시",
    "elapsed": "прошло,прошедшее,изминало,uplynul,forløbet,forløpt,kulunut,gecen sure,eltelt,已用时间,"
    "运行时间,경과",
    "clock time": "klokkeslæt,klokkeslett,kellonaika",
    "energy": "энерги,енерги,енергі,потреблен,потребен,споживан,показания счетчика,spotreb,forbrug,forbruk,"
    "kulutus,enerji,tuketim,fogyasztas,ενεργεια,καταναλωση,电能,電能,电量,電量,用电,用電,전력량,사용량,에너지",
    "power": "мощност,потужн,prikon,vykon,teho,guc,teljesitmeny,putere,ισχυσ,功率,전력",
    "voltage": "напряжен,напрежен,напруг,napeti,napatie,spænding,spenning,jannite,gerilim,feszultseg,ταση,"
    "tensiune,电压,電壓,전압",
    "current": "сила тока,струм,proud,strøm,virta,akım,aramerosseg,ρευμα,prud,电流,전류",
    "temperature": "температур,teplota,lampotila,sıcaklık,homerseklet,θερμοκρασια,溫度,온도",
    "frequency": "частот,честот,kmitocet,taajuus,frekans,频率,頻率,주파수",
    "device": "устроиств,пристріи,машина,принтер,zarizeni,zariadeni,tiskarna,enhed,laite,cihaz,yazıcı,eszkoz,"
    "设备,設備,打印机,기기,장치,프린터",
    "state": "состояни,състояни,tilstand,durum,状态,상태",
}
#: parts of words by quantity
PARTS = {quantity: tuple(words.split(",")) for quantity, words in _PARTS.items()}
_TOKENS = {
    "time": "время,време,час,cas,aika,zaman,ido,timp,χρονοσ,ωρα,时间,시간",
    "date": "дата,pvm,paivamaara,tarih,日期,날짜,ημερομηνια",
    "current": "ток",
}
#: whole words, for those too short to be looked for inside others
TOKENS = {word: quantity for quantity, words in _TOKENS.items() for word in words.split(",")}
_UNITS = {
    ("power", "W"): "вт,瓦,瓦特,와트",
    ("power", "kW"): "квт,千瓦",
    ("energy", "Wh"): "втч,вт·ч,вт*ч,вт-ч,瓦时,瓦時",
    ("energy", "kWh"): "квтч,квт·ч,квт*ч,квт-ч,千瓦时,千瓦時",
    ("voltage", "V"): "伏",
    ("current", "A"): "安",
}
#: units in lower case, as `core.logs.words.UNITS` has them
UNITS = {letters: unit for unit, written in _UNITS.items() for letters in written.split(",")}
