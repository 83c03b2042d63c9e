using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The days of the testers: verified each morning, calibrated each year; the second drifts until it leaves its band and is mended.</summary>
internal sealed class DemoTesters(DemoCast cast, DemoDays days)
{
    // In days before the first start, and again each time the troubles come round.
    private const int OutOfBand = 36;
    private const int BackAgain = 33;

    private const decimal OffKpa = 3.0m;
    private const decimal KpaAPsi = 6.894757m;

    // Of one bottle against the next: a seventh of the demo's r.
    private const decimal NoiseKpa = 0.12m;

    private static readonly (string Tester, int Back)[] Calibrations =
    [
        (DemoInstrumentActs.First, 570), (DemoInstrumentActs.Second, 275), (DemoInstrumentActs.Third, 285), (DemoInstrumentActs.First, 215),
    ];

    private readonly DemoInstrumentActs _acts = new(cast);

    /// <summary>The tester that a day's batch is measured on.</summary>
    public static string On(DemoProduct product, int back) => product == DemoProduct.Super ? DemoInstrumentActs.Third
        : IsAway(back) || back / 2 % 2 == 1 ? DemoInstrumentActs.First : DemoInstrumentActs.Second;

    /// <summary>What a tester shows of a bottle: the truth, its bias of that day and the scatter of one bottle; in the product's own unit.</summary>
    public static decimal Shown(decimal value, DemoSample sample, int container, string tester, int back)
    {
        var kpa = Bias(tester, back) + (NoiseKpa * DemoName.Scatter(sample.Determination(container)));
        return value + (sample.Product == DemoProduct.Blendstock ? kpa / KpaAPsi : kpa);
    }

    public DemoStep Added() => new(days.At(-1, 14), async cancel =>
    {
        await Add(DemoInstrumentActs.First, days.Day(-150), cancel);
        await Add(DemoInstrumentActs.Second, days.Day(-30), cancel);
        await Add(DemoInstrumentActs.Third, days.Day(-40), cancel);
    });

    public IEnumerable<DemoStep> Morning(int day)
    {
        var back = days.Back(day);
        var analyst = DemoBatch.AnalystOf(back);
        yield return Verified(days.At(day, 6, 10), analyst, DemoInstrumentActs.First, back);
        if (!IsAway(back))
            yield return Verified(days.At(day, 6, 20), analyst, DemoInstrumentActs.Second, back);
        yield return Verified(days.At(day, 6, 30), analyst, DemoInstrumentActs.Third, back);
        foreach (var tester in Calibrations.Where(c => c.Back == back).Select(c => c.Tester))
        {
            yield return new(days.At(day, 14), cancel =>
                _acts.Calibrate(DemoPeople.Hugh, tester, days.Day(day), days.Day(day).AddYears(1), cancel));
        }
    }

    /// <summary>The second tester leaves its band, is stopped, cleaned and put back.</summary>
    public IEnumerable<DemoStep> Trouble(int day)
    {
        var back = days.Back(day);
        var analyst = DemoBatch.AnalystOf(back);
        if (DemoIncidents.InRound(back) == OutOfBand)
        {
            yield return new(days.At(day, 6, 20), cancel => _acts.Verify(analyst, DemoInstrumentActs.Second, OffKpa, cancel));
            yield return new(days.At(day, 6, 40), cancel =>
                _acts.Stop(analyst, DemoInstrumentActs.Second, "verification fluid above its band, a fresh bottle too", cancel));
        }

        if (DemoIncidents.InRound(back) == BackAgain)
        {
            yield return Verified(days.At(day, 13), analyst, DemoInstrumentActs.Second, back);
            yield return new(days.At(day, 14), cancel =>
                _acts.PutBack(DemoPeople.Hugh, DemoInstrumentActs.Second, "piston seal replaced, fluid in its band again", cancel));
        }
    }

    /// <summary>Of the first tester and the third: the second waits for its fluid.</summary>
    public IEnumerable<DemoStep> Today(DateTimeOffset at) =>
        [Verified(at, DemoPeople.Ines, DemoInstrumentActs.First, back: 0), Verified(at, DemoPeople.Ines, DemoInstrumentActs.Third, back: 0)];

    // The second tester is out of service, or comes back only.
    private static bool IsAway(int back) => DemoIncidents.InRound(back) is <= OutOfBand and >= BackAgain;

    // The first reads a little low; the second drifts upwards from the day on which its seal was replaced.
    private static decimal Bias(string tester, int back)
    {
        if (tester != DemoInstrumentActs.Second)
            return tester == DemoInstrumentActs.First ? -0.05m : 0.08m;
        var daysSinceSeal = (BackAgain - back % DemoIncidents.Round + DemoIncidents.Round) % DemoIncidents.Round;
        return 0.05m + (0.25m * daysSinceSeal / DemoIncidents.Round);
    }

    // Due when it is calibrated next in the story, and a few days more.
    private Task Add(string tester, DateOnly calibrated, CancellationToken cancel)
    {
        var next = Calibrations.Where(c => c.Tester == tester && c.Back <= days.Count).Select(c => (DateOnly?)days.Today.AddDays(10 - c.Back)).FirstOrDefault();
        return _acts.Add(DemoPeople.Hugh, tester, calibrated, next ?? calibrated.AddYears(1), cancel);
    }

    private DemoStep Verified(DateTimeOffset at, string by, string code, int back) =>
        new(at, cancel => _acts.Verify(by, code, Rounding.ToPlaces(Bias(code, back), 3), cancel));
}
