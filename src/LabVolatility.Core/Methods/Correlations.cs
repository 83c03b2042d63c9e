using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The correlations that ship.</summary>
/// <remarks>
/// Source: named with each printed form. Three of them may answer for one reading on ASTM D5191, and differ:
/// a regulatory choice, so that a result always carries its correlation.
/// </remarks>
public static class Correlations
{
    /// <summary>All that ship.</summary>
    public static IReadOnlyList<Correlation> All { get; } =
    [
        new("ASTM D5191", Authority.Astm, TestMethods.AstmD5191, "DVPE", "ASTM D5191-22", "Ptot",
        [
            new(PressureUnit.Kilopascal, 0.965m, 3.78m, "ASTM D5191-22, equation 1", FactStatus.Published),
            new(PressureUnit.Psi, 0.965m, 0.548m, "ASTM D5191-22, equation 1", FactStatus.FromMemory),
        ]),
        new("EN 13016-1", Authority.En, TestMethods.En13016Part1, "DVPE", "EN 13016-1:2024", "ASVP",
        [
            new(PressureUnit.Kilopascal, 0.965m, 3.78m, "EN 13016-1:2024, calculation of DVPE", FactStatus.FromMemory),
        ]),
        new("EPA", Authority.Epa, TestMethods.AstmD5191, "RVP", "40 CFR 1090.1355(a)", "Ptot",
        [
            new(PressureUnit.Kilopascal, 0.956m, 2.39m, FederalRule, FactStatus.FromMemory),
            new(PressureUnit.Psi, 0.956m, 0.347m, FederalRule, FactStatus.FromMemory),
        ]),
        new("CARB", Authority.Carb, TestMethods.AstmD5191, "RVP", "13 CCR 2297", "Ptot",
        [
            new(PressureUnit.Kilopascal, 0.972m, 4.93m, "13 CCR 2297", FactStatus.FromMemory),
            new(PressureUnit.Psi, 0.972m, 0.715m, "13 CCR 2297", FactStatus.FromMemory),
        ]),
        new("ASTM D6378", Authority.Astm, TestMethods.AstmD6378, "DVPE", "ASTM D6378-22, predicted DVPE", Correlation.VaporPressure,
        [
            new(PressureUnit.Kilopascal, 1m, 1.005m, $"{Predicted}, 1 L", FactStatus.Published) { ContainerMillilitres = 1000m },
            new(PressureUnit.Kilopascal, 1m, 0.751m, $"{Predicted}, 250 mL", FactStatus.Published) { ContainerMillilitres = 250m },
            new(PressureUnit.Psi, 1m, 0.15m, $"{Predicted}, 1 L", FactStatus.FromMemory) { ContainerMillilitres = 1000m },
            new(PressureUnit.Psi, 1m, 0.11m, $"{Predicted}, 250 mL", FactStatus.FromMemory) { ContainerMillilitres = 250m },
        ]),
    ];

    private const string Predicted = "ASTM D6378-22, predicted DVPE";

    private const string FederalRule =
        "40 CFR 1090.1355(a); constants as in the former 40 CFR 80 appendix E, method 3, 9.2";

    /// <summary>The authority's correlation on a method; null where it has none there.</summary>
    /// <param name="method">The method's designation.</param>
    /// <param name="authority">Whose correlation.</param>
    public static Correlation? Find(string method, Authority authority) =>
        All.FirstOrDefault(correlation => correlation.Method == method && correlation.Authority == authority);

    /// <summary>Whether no correlation of a method is public, so that the laboratory enters its own.</summary>
    public static bool AreOwn(TestMethod method) => All.All(correlation => correlation.Method != method.Designation);

    /// <summary>The correlation of that name; null where none ships.</summary>
    /// <param name="name">For example "EPA".</param>
    public static Correlation? Named(string name) => All.FirstOrDefault(correlation => correlation.Name == name);
}
