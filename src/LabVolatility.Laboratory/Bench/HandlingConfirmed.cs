using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "handling is confirmed": at the bench a person confirms each step that no value proves.</summary>
public static class HandlingConfirmed
{
    public const string Rule = "handling-is-confirmed";

    // Proved by a typed value, by the container's record or by the air-saturation answer, not by a tick.
    private static readonly HashSet<string> ProvedOtherwise = ["chill", "fill", "air", "haze", "first-test", "rinse", "introduce", "equilibrium", "consecutive"];

    /// <summary>Codes of what a person confirms for a method: handling steps, then cautions to acknowledge.</summary>
    public static IReadOnlyList<string> Codes(TestMethod method) =>
    [
        .. method.Handling.Select(h => h.Code).Where(code => !ProvedOtherwise.Contains(code)),
        .. method.Cautions.Where(c => c.Gate == CautionGate.Acknowledge).Select(c => c.Code),
    ];

    /// <summary>What is still to be confirmed or answered at the bench.</summary>
    public static IEnumerable<Problem> Check(TestMethod method, ReadingsAsTyped readings, HandlingAsTyped handling)
    {
        foreach (var code in Codes(method).Where(code => handling.Confirmed.All(c => c.Code != code)))
        {
            var text = method.Handling.FirstOrDefault(h => h.Code == code)?.Text ?? method.Cautions.First(c => c.Code == code).Text;
            yield return new Problem($"/handling/confirmed/{code}", $"Confirm: {text}", Rule);
        }

        if (Asks("chill") && handling.ChilledTo is null)
            yield return new Problem("/handling/chilledTo", "Measure the chilled sample's temperature and type it.", Rule);
        if (Asks("air") && handling.AirSaturated is null)
            yield return new Problem("/handling/airSaturated", "Was it air-saturated as the method asks?", Rule);
        if (Asks("rinse") && handling.RinseCycles is null)
            yield return new Problem("/handling/rinseCycles", "How many times was the chamber rinsed with the sample?", Rule);
        if (Asks("introduce") && readings.IntroductionTemperature is null)
            yield return new Problem("/readings/introductionTemperature", "At what temperature was the specimen taken in?", Rule);
        if (Asks("consecutive") && handling.ConsecutiveDeterminations is null)
            yield return new Problem("/handling/consecutiveDeterminations", "How many times did the instrument run the test on this container?", Rule);
        if (Asks("equilibrium") && handling.AtEquilibrium is null)
            yield return new Problem("/handling/atEquilibrium", "Did each pressure stand still when it was read?", Rule);
        if (Asks("haze") && handling.Confirmed.All(c => c.Code != "haze"))
            yield return new Problem("/handling/hazy", $"Look at the {(method.TakesGasOff ? "sample left over" : "chilled sample")}: clear, hazy, or two phases?", Rule);

        bool Asks(string code) => method.Handling.Any(h => h.Code == code);
    }
}
