using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Instruments;

/// <summary>The history of an instrument's verifications.</summary>
public sealed partial class VerificationTable : ComponentBase
{
    [Parameter, EditorRequired]
    public InstrumentSheet Sheet { get; set; } = null!;

    private static string? Kpa(decimal? value) => value is { } known ? Rounding.Text(known, 2) : null;
}
