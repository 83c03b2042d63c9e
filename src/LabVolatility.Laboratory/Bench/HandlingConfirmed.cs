using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "handling is confirmed": at the bench a person confirms each step that no value proves.</summary>
public static class HandlingConfirmed
{
    public const string Rule = "handling-is-confirmed";

    // Proved by a typed value, by the container's record or by the air-saturation answer, not by a tick.
    private static readonly HashSet<string> ProvedOtherwise = ["chill", "fill", "air", "haze", "first-test"];

    /// <summary>Codes of what a person confirms for a method: handling steps, then cautions to acknowledge.</summary>
    public static IReadOnlyList<string> Codes(TestMethod method) =>
    [
        .. method.Handling.Select(h => h.Code).Where(code => !ProvedOtherwise.Contains(code)),
        .. method.Cautions.Where(c => c.Gate == CautionGate.Acknowledge).Select(c => c.Code),
    ];

    /// <summary>What is still to be confirmed or answered at the bench.</summary>
    public static IEnumerable<Problem> Check(TestMethod method, HandlingAsTyped handling, bool hazeAnswered)
    {
        foreach (var code in Codes(method).Where(code => handling.Confirmed.All(c => c.Code != code)))
        {
            var text = method.Handling.FirstOrDefault(h => h.Code == code)?.Text ?? method.Cautions.First(c => c.Code == code).Text;
            yield return new Problem($"/handling/confirmed/{code}", $"Confirm: {text}", Rule);
        }

        if (method.Handling.Any(h => h.Code == "chill") && handling.ChilledTo is null)
            yield return new Problem("/handling/chilledTo", "Measure the chilled sample's temperature and type it.", Rule);
        if (method.Handling.Any(h => h.Code == "air") && handling.AirSaturated is null)
            yield return new Problem("/handling/airSaturated", "Was it air-saturated as the method asks?", Rule);
        if (method.Handling.Any(h => h.Code == "haze") && !hazeAnswered)
            yield return new Problem("/handling/hazy", "Look at the chilled sample: clear, hazy, or two phases?", Rule);
    }
}
