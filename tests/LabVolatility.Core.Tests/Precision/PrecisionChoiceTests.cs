using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Precision;

public sealed class PrecisionChoiceTests
{
    // Invented figures: the ones of the current edition aren't public.
    private static readonly PrecisionStatement Litre = Entered("22", 1000m, 1.0m);
    private static readonly PrecisionStatement Quarter = Entered("22", 250m, 1.2m);
    private static readonly PrecisionStatement Any = Entered("22", null, 1.4m);

    [Fact]
    public void Choose_OlderEdition_NeverFillsIn()
    {
        var answer = PrecisionChoice.Choose(PublishedPrecision.All, Question(1000m));

        Assert.Null(answer.Statement);
        Assert.Contains("91-01", answer.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Choose_OwnContainer_GoesBeforeTheGeneralOne()
    {
        PrecisionStatement[] all = [Any, Litre, Quarter];

        Assert.Same(Litre, PrecisionChoice.Choose(all, Question(1000m)).Statement);
        Assert.Same(Quarter, PrecisionChoice.Choose(all, Question(250m)).Statement);
        Assert.Same(Any, PrecisionChoice.Choose(all, Question(500m)).Statement);
        Assert.Same(Any, PrecisionChoice.Choose(all, Question(null)).Statement);
    }

    [Fact]
    public void Choose_NoneFits_SaysWhy()
    {
        Assert.Contains("other containers", PrecisionChoice.Choose([Litre], Question(250m)).Why, StringComparison.Ordinal);
        Assert.Contains("outside the range", PrecisionChoice.Choose([Litre with { HighKpa = 50m }], Question(1000m)).Why, StringComparison.Ordinal);
        Assert.Contains("No precision is set", PrecisionChoice.Choose([Litre with { Method = "EN 13016-1" }], Question(1000m)).Why, StringComparison.Ordinal);
        Assert.Contains("More than one", PrecisionChoice.Choose([Litre, Litre with { Source = "another" }], Question(1000m)).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Choose_Range_IncludesItsEnds()
    {
        var statement = Litre with { LowKpa = 60m, HighKpa = 60m };

        Assert.Same(statement, PrecisionChoice.Choose([statement], Question(1000m)).Statement);
    }

    // ASTM D5191-91 to -01, from memory: R = 0.0161 · (P + 18.0 psi); at 6.8 psi 0.399 psi.
    [Fact]
    public void PublishedPrecision_FirstStudy_IsItsEquation()
    {
        var level = AbsolutePressure.From(6.8m, PressureUnit.Psi);
        var statement = PublishedPrecision.All.Single(s => s.Unit == PressureUnit.Psi);

        Assert.Equal(0.39928m, statement.ReproducibilityAt(level, PressureUnit.Psi));
        Assert.Equal(0.200136m, statement.RepeatabilityAt(level, PressureUnit.Psi));
        Assert.Equal(("91-01", FactStatus.FromMemory), (statement.Edition, statement.Status));
    }

    // An older statement is there to be read; it never answers for the edition in force.
    [Fact]
    public void PublishedPrecision_Each_IsOfAnOlderEdition() => Assert.All(PublishedPrecision.All, s =>
    {
        Assert.True(TestMethods.TryFind(s.Method, out var method));
        Assert.NotEqual(method.Edition, s.Edition);
    });

    [Fact]
    public void ReproducibilityAt_OtherUnit_IsConverted()
    {
        var level = AbsolutePressure.From(60m, PressureUnit.Kilopascal);

        Assert.Equal(14.0m, Any.RepeatabilityAt(level, PressureUnit.Millibar));
        Assert.Null((Any with { Reproducibility = null }).ReproducibilityAt(level, PressureUnit.Psi));
    }

    private static PrecisionStatement Entered(string edition, decimal? millilitres, decimal r) => new(
        "ASTM D5191", edition, "DVPE", null, millilitres, null, null, PressureUnit.Kilopascal,
        new LinearForm(r, 0m), new LinearForm(2m * r, 0m), "invented for this test", FactStatus.Laboratory);

    private static PrecisionQuestion Question(decimal? millilitres) => new(
        "ASTM D5191", "22", "DVPE", ContainerKind.GlassBottle,
        millilitres is { } size ? Volume.From(size, VolumeUnit.Millilitre) : null,
        AbsolutePressure.From(60m, PressureUnit.Kilopascal));
}
