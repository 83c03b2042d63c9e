using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Samples;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Grades, tanks, the area, limits and precision of the demo; what needs two people is drafted by one and approved by the other.</summary>
internal sealed class DemoReference(DemoCast cast, DateOnly since)
{
    public const string JettyLine = "JETTY-1";
    public const string TransferLine = "LINE-4";
    public const string Rundown = "BLENDER-1";

    private const string OwnFigures = "demo figures, not from any standard";
    private const string Drafter = DemoPeople.Hugh;
    private const string Approver = DemoPeople.Kola;

    public async Task GradesAndTanks(CancellationToken cancel)
    {
        var (grades, tanks, points) = (new KeepGrade(cast.Open, cast.Clock), new KeepTank(cast.Open), new KeepSamplePoint(cast.Open));
        foreach (var product in DemoProduct.All)
            DemoCast.Must(await grades.Add(cast[Drafter], product.Grade, cancel), $"adding grade {product.Code}");
        foreach (var (product, tank) in DemoProduct.All.SelectMany(p => p.Tanks.Select(t => (p, t))))
            DemoCast.Must(await tanks.Add(cast[Drafter], new Tank { Code = tank, Name = $"Tank {tank[2..]}", GradeCode = product.Code, CapacityCubicMetres = 12_000m }, cancel), $"adding {tank}");
        foreach (var point in Points())
            DemoCast.Must(await points.Add(cast[Drafter], point, cancel), $"adding {point.Code}");
    }

    public async Task Area(CancellationToken cancel)
    {
        var keep = new KeepArea(cast.Open, cast.Clock);
        var area = new LaboratoryArea
        {
            Code = DemoMarket.Coast,
            Name = "Northmere coast (invented)",
            Derogation = true,
            Calendar = [DemoMarket.CoastSummer, DemoMarket.CoastWinter],
            Source = $"calendar of an invented state: {OwnFigures}; classes of EN 228",
            EffectiveFrom = since,
        };
        var draft = DemoCast.Must(await keep.Draft(cast[Drafter], area, cancel), "drafting the area");
        DemoCast.Must(await keep.Approve(cast[Approver], draft, cancel), "approving the area");
    }

    public async Task Limits(CancellationToken cancel)
    {
        var keep = new KeepLimit(cast.Open, cast.Clock);
        foreach (var limit in OwnLimits())
        {
            var draft = DemoCast.Must(await keep.Draft(cast[Drafter], limit, cancel), $"drafting {limit.Key}");
            DemoCast.Must(await keep.Approve(cast[Approver], draft, cancel), $"approving {limit.Key}");
        }
    }

    public async Task Precision(CancellationToken cancel)
    {
        var keep = new KeepPrecision(cast.Open, cast.Clock);
        foreach (var entry in OwnPrecision())
        {
            var draft = DemoCast.Must(await keep.Draft(cast[Drafter], entry, cancel), $"drafting precision of {entry.Method}");
            DemoCast.Must(await keep.Approve(cast[Approver], draft, cancel), $"approving precision of {entry.Method}");
        }
    }

    /// <summary>The correlation of the method that has no published one: DVPE = Ptot − Pgas − 1.0 kPa.</summary>
    public async Task Correlation(CancellationToken cancel)
    {
        var keep = new KeepCorrelation(cast.Open, cast.Clock);
        var own = new CorrelationEntry
        {
            Method = TestMethods.En13016Part3, TotalSlope = 1m, GasSlope = -1m, Constant = -DemoReading.FreeOfAirLess,
            Unit = PressureUnit.Kilopascal, From = since, Source = OwnFigures,
        };
        var draft = DemoCast.Must(await keep.Draft(cast[Drafter], own, cancel), "drafting a correlation");
        DemoCast.Must(await keep.Approve(cast[Approver], draft, cancel), "approving a correlation");
    }

    public static string PointOf(string tank) => $"{tank}-SP";

    private static IEnumerable<SamplePoint> Points() =>
    [
        .. DemoProduct.All.SelectMany(p => p.Tanks).Select(t => new SamplePoint { Code = PointOf(t), Name = $"Closed sampler of tank {t[2..]}", TankCode = t }),
        new SamplePoint { Code = JettyLine, Name = "Jetty 1, loading line" },
        new SamplePoint { Code = TransferLine, Name = "Line 4, transfer to the pipeline" },
        new SamplePoint { Code = Rundown, Name = "Blender 1, rundown" },
    ];

    private IEnumerable<LaboratoryLimit> OwnLimits() =>
    [
        Own("EXPORT-CONTRACT/DVPE", 68.0m, Standing.Contract, isRequired: true, "cargo contract of the demo, clause 4"),
        Own("EXPORT-TARGET/DVPE", 67.0m, Standing.Internal, isRequired: false, "blending instruction of the demo, 2"),
    ];

    private LaboratoryLimit Own(string key, decimal maximum, Standing standing, bool isRequired, string source) => new()
    {
        Key = key,
        AreaCode = DemoMarket.Export,
        GradeCode = DemoProduct.Plain.Code,
        Quantity = "DVPE",
        Maximum = maximum,
        Unit = PressureUnit.Kilopascal.Symbol(),
        Digits = 1,
        Methods = [TestMethods.En13016Part1],
        Standing = standing,
        Required = isRequired,
        Source = $"{source} ({OwnFigures})",
        EffectiveFrom = since,
    };

    private static IEnumerable<PrecisionEntry> OwnPrecision() =>
    [
        Own(TestMethods.En13016Part1, "DVPE", PressureUnit.Kilopascal, 0.8m, 1.6m),
        Own(TestMethods.En13016Part3, "DVPE", PressureUnit.Kilopascal, 0.8m, 1.6m),
        Own(TestMethods.AstmD5191, "DVPE", PressureUnit.Kilopascal, 0.8m, 1.6m),
        Own(TestMethods.AstmD5191, "RVP", PressureUnit.Psi, 0.12m, 0.24m),
    ];

    private static PrecisionEntry Own(string method, string quantity, PressureUnit unit, decimal r, decimal bigR) => new()
    {
        Method = method,
        Edition = TestMethods.TryFind(method, out var found) ? found.Edition : throw new InvalidOperationException($"The demo's method {method} is gone."),
        Quantity = quantity,
        Unit = unit,
        RepeatabilityConstant = r,
        ReproducibilityConstant = bigR,
        Source = OwnFigures,
    };
}
