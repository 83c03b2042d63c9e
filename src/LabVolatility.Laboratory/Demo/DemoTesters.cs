namespace LabVolatility.Laboratory.Demo;

/// <summary>The days of the two testers: verified each morning; one out of its band for a while, one calibrated.</summary>
internal sealed class DemoTesters(DemoCast cast, DemoDays days)
{
    private const int OutOfBand = 24;
    private const int BackAgain = 27;
    private const int Calibration = 30;

    private readonly DemoInstrumentActs _acts = new(cast);

    /// <summary>Whether the second tester is out of service, or comes back only, on a day.</summary>
    public static bool IsAway(int day) => day is >= OutOfBand and <= BackAgain;

    public DemoStep Added() => new(days.At(-1, 14), async cancel =>
    {
        await _acts.Add(DemoPeople.Hugh, DemoInstrumentActs.First, days.Day(-150), days.Day(Calibration + 10), cancel);
        await _acts.Add(DemoPeople.Hugh, DemoInstrumentActs.Second, days.Day(-30), days.Day(-30).AddYears(1), cancel);
    });

    public IEnumerable<DemoStep> Morning(int day)
    {
        var analyst = DemoBatch.AnalystOf(day);
        yield return Verified(days.At(day, 6, 10), analyst, DemoInstrumentActs.First);
        if (!IsAway(day))
            yield return Verified(days.At(day, 6, 20), analyst, DemoInstrumentActs.Second);
        if (day == Calibration)
        {
            yield return new(days.At(day, 14), cancel =>
                _acts.Calibrate(DemoPeople.Hugh, DemoInstrumentActs.First, days.Day(day), days.Day(day).AddYears(1), cancel));
        }
    }

    /// <summary>The second tester leaves its band, is stopped, cleaned and put back.</summary>
    public IEnumerable<DemoStep> Trouble()
    {
        yield return new(days.At(OutOfBand, 6, 20), cancel =>
            _acts.Verify(DemoBatch.AnalystOf(OutOfBand), DemoInstrumentActs.Second, isOff: true, cancel));
        yield return new(days.At(OutOfBand, 6, 40), cancel =>
            _acts.Stop(DemoBatch.AnalystOf(OutOfBand), DemoInstrumentActs.Second, "verification fluid above its band, a fresh bottle too", cancel));
        yield return Verified(days.At(BackAgain, 13), DemoBatch.AnalystOf(BackAgain), DemoInstrumentActs.Second);
        yield return new(days.At(BackAgain, 14), cancel =>
            _acts.PutBack(DemoPeople.Hugh, DemoInstrumentActs.Second, "piston seal replaced, fluid in its band again", cancel));
    }

    /// <summary>Of the first tester only: the second waits for its fluid.</summary>
    public DemoStep Today(DateTimeOffset at) => Verified(at, DemoPeople.Ines, DemoInstrumentActs.First);

    private DemoStep Verified(DateTimeOffset at, string by, string code) =>
        new(at, cancel => _acts.Verify(by, code, isOff: false, cancel));
}
