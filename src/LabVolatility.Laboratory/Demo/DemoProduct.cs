using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>A grade of the demo with its tanks, and what its batches are blended to.</summary>
internal sealed record DemoProduct(Grade Grade, string Method, IReadOnlyList<string> Tanks)
{
    private const int HoursToResult = 4;

    // Decided by the demo laboratory, for fewer containers than the ten that ISO 4259-2 names.
    private const int ResultsInAll = 4;

    public static DemoProduct Plain { get; } = new(
        new Grade
        {
            Code = "G95", Name = "Gasoline 95, without ethanol", Kind = SampleKind.Gasoline, State = ProductState.Finished,
            Tests = [new GradeTest(TestMethods.En13016Part1, [Authority.En], Duplicate: false, HoursToResult)],
            Rule = DecisionRule.Simple, ResultsInAll = ResultsInAll,
        },
        TestMethods.En13016Part1, ["T-101", "T-102"]);

    public static DemoProduct WithEthanol { get; } = new(
        new Grade
        {
            Code = "G95-E10", Name = "Gasoline 95 with ethanol", Kind = SampleKind.EthanolBlend, State = ProductState.Finished,
            Tests = [new GradeTest(TestMethods.En13016Part1, [Authority.En], Duplicate: true, HoursToResult)],
            Rule = DecisionRule.Guarded, Confidence = 0.95m, ResultsInAll = ResultsInAll,
        },
        TestMethods.En13016Part1, ["T-201", "T-202"]);

    public static DemoProduct Blendstock { get; } = new(
        new Grade
        {
            Code = "BOB-9", Name = "Blendstock for blending with ethanol, 9.0 psi market", Kind = SampleKind.Gasoline, State = ProductState.Blendstock,
            Tests = [new GradeTest(TestMethods.AstmD5191, [Authority.Epa, Authority.Astm], Duplicate: false, HoursToResult)],
            Rule = DecisionRule.Simple, ResultsInAll = ResultsInAll,
        },
        TestMethods.AstmD5191, ["T-301", "T-302"]);

    public static DemoProduct Super { get; } = new(
        new Grade
        {
            Code = "G98", Name = "Gasoline 98, without ethanol", Kind = SampleKind.Gasoline, State = ProductState.Finished,
            Tests = [new GradeTest(TestMethods.En13016Part3, [Authority.En], Duplicate: false, HoursToResult)],
            Rule = DecisionRule.Simple, ResultsInAll = ResultsInAll,
        },
        TestMethods.En13016Part3, ["T-401", "T-402"]);

    /// <summary>In the order in which the days take turns.</summary>
    public static IReadOnlyList<DemoProduct> All { get; } = [Plain, WithEthanol, Blendstock, Super];

    /// <summary>Whose turn it is so many days before the first start.</summary>
    public static DemoProduct Of(int back) => All[(All.Count - (back % All.Count)) % All.Count];

    public string Code => Grade.Code;
}
