using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api;

/// <summary>A number with its unit, as answers carry it.</summary>
public sealed record Quantity(decimal Value, string Unit)
{
    public static Quantity Of(decimal value, string unit) => new(Rounding.Trim(value), unit);

    public static Quantity? Of(decimal? value, string unit) => value is { } number ? Of(number, unit) : null;

    public static Quantity? Of(decimal? value, PressureUnit unit) => Of(value, unit.Symbol());
}
