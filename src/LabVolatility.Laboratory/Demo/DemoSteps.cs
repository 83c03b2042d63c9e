using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The pieces that the story of a batch is put together from.</summary>
internal sealed class DemoSteps(DemoCast cast)
{
    private const int CertifiedDays = 60;

    private readonly DemoBatchActs _batches = new(cast);
    private readonly DemoBenchActs _bench = new(cast);

    public DemoStep Filled(DemoBatch batch, DateTimeOffset at) => new(at, cancel =>
        _batches.Move(DemoPeople.Runa, batch.Tank!, MovementKind.Receipt, batch.CubicMetres, $"blend {batch.Number}", cancel));

    public DemoStep Registered(DemoBatch batch, DateTimeOffset at, DateTimeOffset needed, string? note = null) => new(at, cancel =>
        _batches.Register(DemoPeople.Runa, new BatchRequest
        {
            Number = batch.Number,
            Grade = batch.Product.Code,
            Tank = batch.Tank,
            CubicMetres = batch.CubicMetres,
            Destinations = batch.Market.Destinations,
            From = batch.Market.From,
            Until = batch.Market.Until,
            NeededBy = needed,
            Note = note,
        }, cancel));

    public DemoStep Announced(DemoBatch batch, DemoSample sample, DateTimeOffset drawn, string? note = null) => new(drawn.AddMinutes(20), cancel =>
        _bench.Announce(batch.Analyst, sample, drawn, note, cancel));

    /// <summary>Brought to the counter without a word before.</summary>
    public DemoStep Brought(string analyst, DemoSample sample, DateTimeOffset drawn, DateTimeOffset at) => new(at, cancel =>
        _bench.TakeIn(analyst, sample, drawn, cancel));

    public DemoStep Received(DemoBatch batch, DemoSample sample, DateTimeOffset at) => new(at, cancel =>
        _bench.Receive(batch.Analyst, sample, null, null, cancel));

    public DemoStep Refused(DemoBatch batch, DemoSample sample, DateTimeOffset at, int leaking, string why) => new(at, cancel =>
        _bench.Receive(batch.Analyst, sample, leaking, why, cancel));

    public IEnumerable<DemoStep> Drawn(DemoBatch batch, DemoSample sample, DateTimeOffset drawn) =>
        [Announced(batch, sample, drawn), Received(batch, sample, drawn.AddMinutes(60))];

    public DemoStep Measured(DemoBatch batch, DemoSample sample, int container, DateTimeOffset at, decimal value, bool hazy = false) =>
        Measured(batch.Analyst, batch.Instrument, sample, container, at, value, hazy);

    public DemoStep Measured(
        string analyst, string tester, DemoSample sample, int container, DateTimeOffset at, decimal value, bool hazy = false) => new(at, cancel =>
        _bench.Measure(analyst, sample, container, tester, value, hazy, cancel));

    public DemoStep Sent(DemoBatch batch, DemoSample sample, int container, DateTimeOffset at) => new(at, cancel =>
        _bench.Send(sample, container, batch.Instrument, batch.Bottle(sample, container), $"RUN-{batch.Number}-{container}", cancel));

    public DemoStep Amended(DemoSample sample, int container, DateTimeOffset at, decimal value, string reason) => new(at, cancel =>
        _bench.Amend(DemoPeople.Kola, sample, container, value, reason, cancel));

    public DemoStep EthanolMeasured(DemoBatch batch, DateTimeOffset at) => new(at, cancel =>
        _batches.MeasureEthanol(batch.Analyst, batch.Number, batch.EthanolPercent, cancel));

    public DemoStep Decided(DemoBatch batch, DateTimeOffset at, string by, DecisionKind kind, string? reason = null) => new(at, cancel =>
        _batches.Decide(by, batch.Number, kind, reason, cancel));

    /// <summary>The next step of the grade's tree, whatever it is by then.</summary>
    public DemoStep StepTaken(DemoBatch batch, DateTimeOffset at, string by) => new(at, cancel =>
        _batches.TakeStep(by, batch.Number, cancel));

    /// <summary>The certificate of a batch of the last weeks; those before were issued by the program that this one follows.</summary>
    public IEnumerable<DemoStep> Certified(DemoBatch batch, DateTimeOffset at, string by) => batch.Back > CertifiedDays ? []
        : [new(at, cancel => _batches.IssueCertificate(by, batch.Number, cancel))];

    public IEnumerable<DemoStep> Released(DemoBatch batch, DateTimeOffset at, string by = DemoPeople.Tessa) =>
        [Decided(batch, at, by, DecisionKind.Release), .. Certified(batch, at.AddMinutes(5), by)];

    public DemoStep Delivered(DemoBatch batch, DateTimeOffset at) => new(at, cancel =>
        _batches.Move(DemoPeople.Runa, batch.Tank!, MovementKind.Delivery, batch.CubicMetres, $"batch {batch.Number}", cancel));

    public DemoStep Circulated(DemoBatch batch, DateTimeOffset at) => new(at, cancel =>
        _batches.Move(DemoPeople.Runa, batch.Tank!, MovementKind.Circulation, null, $"mixing batch {batch.Number}", cancel));

    public DemoStep ButaneAdded(DemoBatch batch, DateTimeOffset at) => new(at, cancel =>
        _batches.Move(DemoPeople.Runa, batch.Tank!, MovementKind.Butane, 12m, $"trimming batch {batch.Number}", cancel));
}
