using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>The instruments, ready or not.</summary>
public sealed partial class InstrumentsPage : LabPage
{
    private readonly HashSet<string> _methods = new(StringComparer.Ordinal);
    private IReadOnlyList<InstrumentLine> _lines = [];
    private IReadOnlyList<Problem> _problems = [];
    private string? _code;
    private string? _name;
    private string? _serial;
    private string? _location;
    private string? _low;
    private string? _high;
    private bool _busy;

    public override string Title => "Instruments";

    public override IReadOnlyList<KeyHint> KeyHints => ListKeys.Hints;

    [Inject]
    private ReadInstruments Read { get; set; } = null!;

    [Inject]
    private KeepInstrument Keep { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.ChangesReadiness();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _lines = await Read.Run(cancellationToken);

    private void Toggle(string method, bool on)
    {
        if (on)
            _methods.Add(method);
        else
            _methods.Remove(method);
    }

    private async Task AddAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var problems = new List<Problem>();
        var (low, high) = (Kpa(_low, "/low", problems), Kpa(_high, "/high", problems));
        if (low > high)
            problems.Add(new Problem("/high", "The range's upper end is below its lower end."));
        if (_methods.Count == 0)
            problems.Add(new Problem("/methods", "Say which method it is set up for."));
        if (problems.Count == 0)
        {
            var instrument = new Instrument
            {
                Code = (_code ?? "").Trim(),
                Name = (_name ?? "").Trim(),
                SerialNumber = Blank(_serial),
                Location = Blank(_location),
                Methods = [.. _methods.Order(StringComparer.Ordinal)],
                LowKpa = low,
                HighKpa = high,
                Version = Guid.NewGuid(),
            };
            var answer = await Keep.Add(await ActorNowAsync(), instrument, Leaving);
            problems.AddRange(answer.Problems);
            if (answer.Ok)
                Addresses.NavigateTo($"/instruments/{instrument.Code}");
        }

        _problems = problems;
        _busy = false;
    }

    private static decimal? Kpa(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadPressure(typed, PressureUnit.Kilopascal, out var pressure, out var wrong))
            return pressure.In(PressureUnit.Kilopascal);
        problems.Add(new Problem(field, wrong!));
        return null;
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
