using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What the demo's people do with samples, from the bottle to the result.</summary>
internal sealed class DemoBenchActs(DemoCast cast)
{
    private const decimal LitreInMillilitres = 1000m;
    private const string Drawer = "Field crew, tank farm";

    private readonly RegisterSample _registerSample = new(cast.Open, cast.Clock);
    private readonly ReceiveSample _receiveSample = new(cast.Open, cast.Clock);
    private readonly ReportDetermination _reportDetermination = new(cast.Open, cast.Clock);
    private readonly AmendDetermination _amendDetermination = new(cast.Open, cast.Clock);

    /// <summary>Announces a sample that was drawn a little earlier.</summary>
    public async Task Announce(string by, DemoSample sample, DateTimeOffset drawn, string? note, CancellationToken cancel)
    {
        var bottles = Numbers(sample).Select(n => new ContainerRequest(ContainerKind.GlassBottle, LitreInMillilitres, Seal: Seal(sample, n)));
        await Register(by, sample, Drawn(sample, drawn, [.. bottles]) with { Note = note }, cancel);
    }

    /// <summary>Registers a sample that nobody announced, as it stands on the counter.</summary>
    public async Task TakeIn(string by, DemoSample sample, DateTimeOffset drawn, CancellationToken cancel)
    {
        var request = Drawn(sample, drawn, [.. Numbers(sample).Select(n => Seen(sample, n, leaking: false))]) with { ReceivedAt = cast.Clock.GetUtcNow() };
        await Register(by, sample, request, cancel);
    }

    /// <param name="by">Who receives it.</param>
    /// <param name="sample">The sample.</param>
    /// <param name="leaking">Number of the bottle that leaks; null: none.</param>
    /// <param name="refusal">Why it is refused; null: it is taken.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async Task Receive(string by, DemoSample sample, int? leaking, string? refusal, CancellationToken cancel)
    {
        var number = await cast.MadeBy(sample.Command, cancel);
        await using var lab = cast.Open();
        var version = await lab.Samples.Where(s => s.Number == number).Select(s => s.Version).FirstAsync(cancel);
        var verdict = refusal is null ? ReceiptVerdict.AsExpected : ReceiptVerdict.Resample;
        var request = new ReceiveSample.Request(number, version, [.. Numbers(sample).Select(n => Seen(sample, n, n == leaking))], verdict, refusal);
        DemoCast.Must(await _receiveSample.Run(cast[by], request, cancel), $"receiving sample {sample.Name}");
    }

    public async Task Measure(string by, DemoSample sample, int container, string instrument, decimal value, bool hazy, CancellationToken cancel)
    {
        var request = await Request(sample, container, instrument, value, hazy, cancel) with { MeasuredBy = by };
        DemoCast.Must(await _reportDetermination.Run(cast[by], request, cancel), $"measuring sample {sample.Name}");
    }

    /// <summary>A program sends a determination and names nobody: it waits for a person.</summary>
    public async Task Send(DemoSample sample, int container, string instrument, decimal value, string externalId, CancellationToken cancel)
    {
        var request = await Request(sample, container, instrument, value, hazy: false, cancel) with { ExternalId = externalId };
        DemoCast.Must(await _reportDetermination.Run(cast.Program, request, cancel), $"sending a determination of sample {sample.Name}");
    }

    public async Task Amend(string by, DemoSample sample, int container, decimal value, string reason, CancellationToken cancel)
    {
        var id = Guid.Parse(await cast.MadeBy(sample.Determination(container), cancel));
        var (readings, _) = Typed(sample, container, value, hazy: false);
        var request = new AmendDetermination.Request(
            DemoName.Id($"amend {sample.Determination(container)}"), id, 1, readings, null, false, null, reason);
        DemoCast.Must(await _amendDetermination.Run(cast[by], request, cancel), $"amending a result of sample {sample.Name}");
    }

    private async Task Register(string by, DemoSample sample, SampleRequest request, CancellationToken cancel) => cast.Remember(
        sample.Command, DemoCast.Must(await _registerSample.Run(cast[by], request, cancel), $"registering sample {sample.Name}"));

    private async Task<DeterminationRequest> Request(
        DemoSample sample, int container, string instrument, decimal value, bool hazy, CancellationToken cancel)
    {
        var (readings, handling) = Typed(sample, container, value, hazy);
        return new DeterminationRequest
        {
            CommandId = DemoName.Id(sample.Determination(container)),
            SampleNumber = await cast.MadeBy(sample.Command, cancel),
            Method = sample.Product.Method,
            ContainerNumber = container,
            Instrument = instrument,
            Readings = readings,
            Handling = handling,
        };
    }

    // Typed text is read as the bench reads it.
    private (ReadingsAsTyped Readings, HandlingAsTyped Handling) Typed(DemoSample sample, int container, decimal value, bool hazy)
    {
        var at = cast.Clock.GetUtcNow();
        var method = TestMethods.TryFind(sample.Product.Method, out var found)
            ? found
            : throw new InvalidOperationException($"The demo's method {sample.Product.Method} is gone.");
        var gas = DemoReading.Gas(sample, container);
        var prepared = gas is null;
        var (readings, handling, problems) = BenchReading.Read(new BenchEntry
        {
            TotalPressure = DemoReading.Total(sample.Product, value, gas),
            GasPressure = gas is { } kpa ? DemoReading.Kpa(kpa) : null,
            Temperature = "37.8",
            VaporLiquidRatio = "4.00",
            IntroductionTemperature = prepared ? null : "20",
            RinseCycles = prepared ? null : "3",
            ConsecutiveDeterminations = prepared ? null : "1",
            AtEquilibrium = prepared ? null : true,
            ChilledTo = prepared ? Rounding.Text(0.5m + (0.2m * DemoName.Scatter($"chilled {sample.Name} {container}")), 1) : null,
            AirSaturated = prepared ? true : null,
            Hazy = hazy,
            Phases = 1,
            Confirmed = [.. HandlingConfirmed.Codes(method).Append("haze").Select(code => new ConfirmedStep(code, at))],
        });
        return problems.Count == 0
            ? (readings, handling)
            : throw new InvalidOperationException($"The demo typed what the bench can't read: {problems[0].Message}");
    }

    private static IEnumerable<int> Numbers(DemoSample sample) => Enumerable.Range(1, sample.Containers);

    private static SampleRequest Drawn(DemoSample sample, DateTimeOffset at, IReadOnlyList<ContainerRequest> bottles) => new()
    {
        CommandId = DemoName.Id(sample.Command),
        Grade = sample.Product.Code,
        Batch = sample.Batch,
        Tank = sample.Tank,
        SamplePoint = sample.Point,
        Level = sample.Level,
        SampledAt = at,
        SampledBy = Drawer,
        Containers = bottles,
    };

    private static ContainerRequest Seen(DemoSample sample, int number, bool leaking) => new(
        ContainerKind.GlassBottle,
        LitreInMillilitres,
        FillPercent: Rounding.ToPlaces(75m + (1.5m * DemoName.Scatter($"fill {sample.Name} {number}")), 0),
        Temperature: Rounding.Text(6m + (1.5m * DemoName.Scatter($"warmth {sample.Name} {number}")), 1),
        Seal: Seal(sample, number),
        SealIntact: true,
        Leaking: leaking,
        Condition: leaking ? "wet around the cap" : null);

    private static string Seal(DemoSample sample, int number) =>
        $"N{DemoName.Id($"seal {sample.Name} {number}").ToString("N")[..6].ToUpperInvariant()}";
}
