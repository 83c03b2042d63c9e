using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>What the methods by triple expansion have in common.</summary>
/// <remarks>
/// Source: ASTM D6378-22: no air saturation, three rinses, taking in at 20 to 37.8 °C, equilibrium (published); fill level
/// and first test as ASTM D5191 (from memory); 20 °C is common practice. Cautions own words, after API RP 2003, NFPA 45.
/// </remarks>
internal static class ExpansionMethod
{
    public static ExpansionSettings Settings { get; } = new(
        3, Temperature.From(20m, TemperatureUnit.Celsius), Temperature.From(20m, TemperatureUnit.Celsius),
        Temperature.From(37.8m, TemperatureUnit.Celsius), "ASTM D6378-22, procedure");

    public static IReadOnlyList<Caution> Cautions { get; } =
    [
        .. BottleMethod.Cautions.Where(c => c.Code is "F-02" or "F-23" or "F-24"),
        new("F-10", "WARNING", "A warm sample sprays and loses light ends. Keep it cool and closed until the instrument takes it; open slowly in the hood.", CautionGate.Show),
        new("F-32", "CAUTION", "Before you leave the run: vent and waste lines connected, waste bottle bonded and not full, fan on.", CautionGate.Show),
    ];

    public static IReadOnlyList<HandlingStep> Handling(string source, FactStatus status) =>
    [
        new("first-test", "Take a container that no other test has opened; one container serves one vapour pressure.", source, FactStatus.FromMemory),
        new("fill", "Look at the fill level: 70 to 80 %. Under 70 % reject.", source, FactStatus.FromMemory),
        new("closed", "Keep the sample closed and cool until it is connected: it is not saturated with air, and must not lose light ends.", source, FactStatus.FromMemory),
        new("rinse", "Connect the sample and rinse the chamber with it at once, three times. Type how many.", source, status),
        new("introduce", "Take the specimen in at 20 to 37.8 °C; 20 °C is usual. Type the temperature.", source, status),
        new("equilibrium", "Read each pressure once three readings, 20 s apart, agree within 0.1 kPa: at each expansion and at the test temperature.", source, status),
        new("consecutive", "Type how many times the instrument repeated the test on this container: 1 where it didn't.", "the laboratory's setting of the instrument", FactStatus.CommonPractice),
        new("haze", "After the test look through what is left of the sample: note haze; two liquids mean a new sample.", source, status),
    ];
}
