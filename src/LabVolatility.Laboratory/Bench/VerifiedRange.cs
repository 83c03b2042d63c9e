using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "within the verified range": an instrument answers only where it was shown to measure right.</summary>
internal static class VerifiedRange
{
    public const string Rule = "above-range";

    public static Problem? Check(Instrument instrument, TypedReading total)
    {
        var kpa = Reading.Pressure(total).Value.In(PressureUnit.Kilopascal);
        return kpa > instrument.HighKpa || kpa < instrument.LowKpa
            ? new Problem("/readings/totalPressure", $"{total.Typed} is outside the verified range of {instrument.Code}, {Text(instrument)}.", Rule)
            : null;
    }

    private static string Text(Instrument instrument) =>
        $"{Rounding.Plain(instrument.LowKpa ?? 0m)} to {(instrument.HighKpa is { } high ? Rounding.Plain(high) : "…")} kPa";
}
