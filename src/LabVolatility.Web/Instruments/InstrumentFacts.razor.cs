using System.Globalization;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>What an instrument is and when it was calibrated.</summary>
public sealed partial class InstrumentFacts : ComponentBase
{
    [Parameter, EditorRequired]
    public Instrument Instrument { get; set; } = null!;

    private string Range => Instrument.LowKpa is null && Instrument.HighKpa is null
        ? "not set: no reading is held against it"
        : $"{End(Instrument.LowKpa)} to {End(Instrument.HighKpa)} kPa, absolute";

    private static string End(decimal? kpa) => kpa is { } known ? Rounding.Plain(known) : "…";

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "not set";
}
