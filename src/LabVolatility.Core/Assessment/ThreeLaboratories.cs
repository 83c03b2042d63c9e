using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>The end of a dispute: a third laboratory, and the outlier dropped.</summary>
public static class ThreeLaboratories
{
    private const string Source = "ISO 4259-2:2017, dispute (from memory)";

    /// <summary>
    /// All three count where every two agree. Else the one farthest from the mean of the other two is dropped, where
    /// those two agree by the test for two laboratories; where they don't, nothing stands.
    /// </summary>
    /// <param name="laboratories">Exactly three, by name, all means in one unit.</param>
    /// <param name="reproducibility">R in that unit, above zero; null: not set.</param>
    /// <param name="repeatability">r in that unit, above zero; needed where a mean has more than one result.</param>
    /// <param name="unit">The unit, for the words and the arithmetic.</param>
    /// <exception cref="ArgumentException">There are not three laboratories.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 1, or r or R is not above zero.</exception>
    /// <remarks>Source: ISO 4259-2:2017, dispute (from memory): the outlier is dropped by the test for two laboratories.</remarks>
    public static ThreeLaboratoryVerdict Judge(
        IReadOnlyList<(string Name, LaboratoryMean Found)> laboratories, decimal? reproducibility, decimal? repeatability, string unit = "")
    {
        if (laboratories.Count != 3)
            throw new ArgumentException("The test is for three laboratories.", nameof(laboratories));
        (int One, int Other)[] pairs = [(0, 1), (0, 2), (1, 2)];
        var verdicts = pairs.Select(p =>
            TwoLaboratories.Judge(laboratories[p.One].Found, laboratories[p.Other].Found, reproducibility, repeatability, unit)).ToList();
        if (verdicts.Find(v => v.Agree is null) is { } unable)
            return new([], null, null, unable.Why, []);
        var steps = verdicts.SelectMany(v => v.Arithmetic).ToList();
        if (verdicts.TrueForAll(v => v.Agree == true))
            return Of([0, 1, 2], null, "All three laboratories agree.");

        var outlier = Enumerable.Range(0, 3).MaxBy(i => Math.Abs(laboratories[i].Found.Value - MeanOf([.. Others(i)])));
        int[] rest = [.. Others(outlier)];
        var name = laboratories[outlier].Name;
        return verdicts[Array.IndexOf(pairs, (rest[0], rest[1]))].Agree == true
            ? Of(rest, outlier, $"{name} is farthest from the others and is dropped; {laboratories[rest[0]].Name} and {laboratories[rest[1]].Name} agree.")
            : new([], null, null, "Even the two nearest laboratories differ by more than is allowed: find the cause before going on.", steps);

        ThreeLaboratoryVerdict Of(int[] used, int? dropped, string why)
        {
            var mean = MeanOf(used);
            steps.Add(new(
                "Mean of the laboratories", $"({string.Join(" + ", used.Select(i => Rounding.Shown(laboratories[i].Found.Value)))}) / {used.Length}",
                mean, unit, Source));
            return new(used, dropped, mean, why, steps);
        }

        decimal MeanOf(int[] used) => used.Sum(i => laboratories[i].Found.Value) / used.Length;
    }

    private static IEnumerable<int> Others(int index) => Enumerable.Range(0, 3).Where(i => i != index);
}
