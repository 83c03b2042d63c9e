using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule "a departure at receipt is decided by a person": leaks, broken seals, warmth and fill level.</summary>
/// <remarks>ISO/IEC 17025 7.4.3; fill level and leaks as ASTM D4953 6.4 and 6.5.</remarks>
public static class ReceiptCondition
{
    public const string Rule = "departure-at-receipt-is-decided";

    /// <summary>Above this a volatile sample arrives warm; common practice, no published figure.</summary>
    private const decimal WarmCelsius = 30m;

    /// <summary>What departs from what was expected, in words, container by container.</summary>
    public static IReadOnlyList<string> Departures(IReadOnlyList<ContainerRequest> containers)
    {
        var found = new List<string>();
        for (var i = 0; i < containers.Count; i++)
        {
            var (container, name) = (containers[i], $"Container {i + 1}");
            if (container.Leaking)
                found.Add($"{name} leaks.");
            if (container.SealIntact == false)
                found.Add($"{name}: the seal is broken.");
            if (container.FillPercent < 70m)
                found.Add($"{name} is {Rounding.Plain(container.FillPercent.Value)} % full; 70 to 80 % is asked for.");
            if (container.FillPercent > 85m)
                found.Add($"{name} is {Rounding.Plain(container.FillPercent.Value)} % full; liquid grows with warmth.");
            if (Celsius(container.Temperature) > WarmCelsius)
                found.Add($"{name} arrived at {container.Temperature}, warmer than {WarmCelsius} °C.");
        }

        return found;
    }

    /// <summary>The problem where something departs and nobody decided, or the decision has no note.</summary>
    public static Problem? Check(IReadOnlyList<string> departures, ReceiptVerdict verdict, string? note) =>
        departures.Count > 0 && verdict == ReceiptVerdict.AsExpected
            ? new Problem("/verdict", string.Join(" ", departures) + " Decide: go on with a disclaimer, resample, or reject.", Rule)
        : verdict != ReceiptVerdict.AsExpected && string.IsNullOrWhiteSpace(note)
            ? new Problem("/verdictNote", "Say why, and who was asked.", Rule)
        : null;

    internal static decimal? Celsius(string? typed) =>
        !string.IsNullOrWhiteSpace(typed) && QuantityText.TryReadTemperature(typed, TemperatureUnit.Celsius, out var t, out _)
            ? t.In(TemperatureUnit.Celsius)
            : null;
}
