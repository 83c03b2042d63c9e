using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>Takes the day's verification; fluid, lot and band are offered from the last one.</summary>
public sealed partial class VerificationForm : ComponentBase
{
    private Guid _command = Guid.NewGuid();
    private Guid? _last;
    private bool _begun;
    private string? _fluid;
    private string? _lot;
    private string? _reading;
    private string? _low;
    private string? _high;
    private bool? _inBand;
    private string? _note;

    [Parameter, EditorRequired]
    public InstrumentSheet Sheet { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<RecordVerification.Request> Entered { get; set; }

    // Anew only after an entry was stored: a refusal throws nothing away.
    protected override void OnParametersSet()
    {
        if (_begun && _last == Sheet.Line.Last?.Id)
            return;
        (_begun, _last, _command) = (true, Sheet.Line.Last?.Id, Guid.NewGuid());
        var last = Sheet.Line.Last;
        (_fluid, _lot, _low, _high) = (last?.Fluid, last?.Lot, Plain(last?.BandLowKpa), Plain(last?.BandHighKpa));
        (_reading, _inBand, _note) = (null, null, null);
    }

    private static string? Plain(decimal? kpa) => kpa is { } known ? Rounding.Plain(known) : null;

    private Task EnterAsync() => Entered.InvokeAsync(new RecordVerification.Request(
        _command, Sheet.Line.Instrument.Code, _fluid, _lot, _reading, _low, _high, _inBand, _note));
}
