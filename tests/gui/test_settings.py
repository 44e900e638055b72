from gui.settings import RECENT_LIMIT, Settings


def test_settings_come_back(tmp_path):
    settings = Settings(tmp_path / "s.ini")
    settings.theme, settings.zoom, settings.reading_panel_open = "dark", 1.5, False
    settings.sync()
    again = Settings(tmp_path / "s.ini")
    assert (again.theme, again.zoom, again.reading_panel_open) == ("dark", 1.5, False)


def test_spoilt_settings_are_as_good_as_none(tmp_path):
    (tmp_path / "s.ini").write_text(
        "[General]\ntheme=plaid\nzoom=huge\nrecent=@Invalid()\ngeometry=nonsense\n"
    )
    settings = Settings(tmp_path / "s.ini")
    assert (settings.theme, settings.zoom, settings.recent) == ("system", 1.0, ())
    assert settings.geometry.isEmpty()


def test_recent_studies_are_few_newest_first_and_there(tmp_path):
    settings = Settings(tmp_path / "s.ini")
    paths = [tmp_path / f"{i}.samepart" for i in range(RECENT_LIMIT + 3)]
    for path in paths:
        path.touch()
        settings.add_recent(path)
    settings.add_recent(paths[5])
    assert settings.recent[0] == paths[5]
    assert len(settings.recent) == RECENT_LIMIT
    assert len(set(settings.recent)) == RECENT_LIMIT
    paths[5].unlink()
    assert paths[5] not in settings.recent


def test_one_recent_study_comes_back_as_one(tmp_path):
    settings = Settings(tmp_path / "s.ini")
    study = tmp_path / "a.samepart"
    study.touch()
    settings.add_recent(study)
    settings.sync()
    assert Settings(tmp_path / "s.ini").recent == (study,)
