using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>r and R at a result's level; null where the laboratory has not set them, and why.</summary>
public sealed record PrecisionInWords(
    string Quantity, string Correlation, decimal? Repeatability, decimal? Reproducibility, PressureUnit Unit, string Why)
{
    public string Text => $"r {Shown(Repeatability)} · R {Shown(Reproducibility)}";

    private string Shown(decimal? value) =>
        value is { } known ? $"{Rounding.Text(known, PressureResolution.Places(Unit) + 1)} {Unit.Symbol()}" : "not set by the laboratory";
}
