using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

public sealed class MeasurementTests
{
    private static readonly TestMethod Astm = TestMethods.All[0];
    private static readonly TestMethod European = TestMethods.All[1];
    private static readonly SampleCondition Good = new(
        SampleKind.Gasoline, ContainerKind.GlassBottle, Volume.From(1m, VolumeUnit.Litre), 75m, AirSaturated: true);

    [Fact]
    public void Evaluate_GoodSample_GivesReadingAndDvpe()
    {
        var outcome = Measurement.Evaluate(Astm, Read(70.0m), Good, Authority.Astm, PressureUnit.Kilopascal);

        Assert.Empty(outcome.Findings);
        Assert.True(outcome.MayReport);
        Assert.Equal(["Ptot", "DVPE"], outcome.Results.Select(r => r.Quantity));
        Assert.Equal((63.77m, "63.8", ""), (outcome.Results[1].Value, outcome.Results[1].Reported, outcome.Results[1].Suffix));
        Assert.Null(outcome.Repeatability);
        Assert.Null(outcome.Reproducibility);
    }

    // 10.00 psi → 9.102 psi in the psi constants; then 9.102 psi is 62.756 kPa by definition.
    [Fact]
    public void Evaluate_PsiReading_UsesPsiConstants()
    {
        var outcome = Measurement.Evaluate(Astm, Read(10.00m, PressureUnit.Psi), Good, Authority.Astm, PressureUnit.Kilopascal);

        Assert.Equal("62.8", outcome.Results[1].Reported);
        Assert.Equal(62.756m, Rounding.ToPlaces(outcome.Results[1].Value, 3));
        Assert.Equal("DVPE = 0.965 · Ptot − 0.548 psi", outcome.Results[1].Equation);
        Assert.Equal(FactStatus.FromMemory, outcome.Results[1].Status);
    }

    [Theory]
    [InlineData(Authority.Epa, "RVP", "64.5"), InlineData(Authority.Carb, "RVP", "63.1"), InlineData(Authority.Astm, "DVPE", "63.8")]
    public void Evaluate_EachAuthority_GivesItsOwnAnswer(Authority authority, string quantity, string reported)
    {
        var result = Measurement.Evaluate(Astm, Read(70.0m), Good, authority, PressureUnit.Kilopascal).Results[1];

        Assert.Equal((quantity, reported), (result.Quantity, result.Reported));
    }

    [Fact]
    public void Evaluate_European_ReportsAsvp()
    {
        var outcome = Measurement.Evaluate(European, Read(70.0m), Good, Authority.En, PressureUnit.Kilopascal);

        Assert.Equal(["ASVP", "DVPE"], outcome.Results.Select(r => r.Quantity));
        Assert.Throws<ArgumentException>(() => Measurement.Evaluate(European, Read(70.0m), Good, Authority.Epa, PressureUnit.Kilopascal));
    }

    [Fact]
    public void Evaluate_Arithmetic_ShowsEachStep()
    {
        var steps = Measurement.Evaluate(Astm, Read(70.0m), Good, Authority.Astm, PressureUnit.Kilopascal).Results[1].Arithmetic;

        Assert.Equal(["Reading", "Correlation", "Rounding"], steps.Select(s => s.Label));
        Assert.Equal(("0.965 · 70.0 − 3.78", 63.77m, "kPa"), (steps[1].Expression, steps[1].Value, steps[1].Unit));
        Assert.Equal(63.8m, steps[2].Value);
        Assert.All(steps, step => Assert.NotEmpty(step.Source));
    }

    [Fact]
    public void Evaluate_ConvertedReading_ShowsTheConversion()
    {
        var steps = Measurement.Evaluate(European, Read(10.00m, PressureUnit.Psi), Good, Authority.En, PressureUnit.Psi).Results[1].Arithmetic;

        Assert.Equal(["Reading", "Unit", "Correlation", "Unit", "Rounding"], steps.Select(s => s.Label));
        Assert.Equal("0.965 · 68.947572… − 3.78", steps[2].Expression);
        Assert.EndsWith("to 2 decimals, half to even", steps[4].Expression, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_BelowTheEquation_GivesNoDvpe()
    {
        var outcome = Measurement.Evaluate(Astm, Read(3.9m), Good, Authority.Astm, PressureUnit.Kilopascal);

        var finding = Assert.Single(outcome.Findings);
        Assert.Equal((FindingCodes.OutsideScope, FindingSeverity.Blocking), (finding.Code, finding.Severity));
        Assert.Equal(["Ptot"], outcome.Results.Select(r => r.Quantity));
        Assert.False(outcome.MayReport);
    }

    [Fact]
    public void Evaluate_NoTotalPressure_BlocksAndSaysSo()
    {
        var outcome = Measurement.Evaluate(Astm, new Readings(), Good, Authority.Astm, PressureUnit.Kilopascal);

        Assert.Equal(FindingCodes.ReadingMissing, Assert.Single(outcome.Findings).Code);
        Assert.Empty(outcome.Results);
    }

    [Fact]
    public void Evaluate_Hazy_CarriesHAndHasNoPrecision()
    {
        var clear = Measurement.Evaluate(Astm, Read(70.0m), Good, Authority.Astm, PressureUnit.Kilopascal, Entered());
        var hazy = Measurement.Evaluate(Astm, Read(70.0m), Good with { Hazy = true }, Authority.Astm, PressureUnit.Kilopascal, Entered());

        Assert.Equal((1.5m, 3.0m), (clear.Repeatability, clear.Reproducibility));
        Assert.All(hazy.Results, result => Assert.Equal("H", result.Suffix));
        Assert.Equal((FindingCodes.Hazy, FindingSeverity.Warning), (hazy.Findings[0].Code, hazy.Findings[0].Severity));
        Assert.Null(hazy.Repeatability);
        Assert.Null(hazy.Reproducibility);
    }

    // ASTM D5191: 7 to 130 kPa, precision for containers of 1 L and 250 mL; outside measurable, without precision.
    [Theory]
    [InlineData(130, 1000, true), InlineData(131, 1000, false), InlineData(70, 250, true), InlineData(70, 125, false)]
    public void Evaluate_WhereTheMethodStatesNone_HasNoPrecision(int kilopascals, int millilitres, bool stated)
    {
        var sample = Good with { ContainerVolume = Volume.From(millilitres, VolumeUnit.Millilitre) };

        var outcome = Measurement.Evaluate(Astm, Read(kilopascals), sample, Authority.Astm, PressureUnit.Kilopascal, Entered());

        Assert.Equal((stated, stated), (outcome.Repeatability is not null, outcome.Reproducibility is not null));
    }

    [Fact]
    public void Evaluate_PrecisionOfAnotherQuantity_DoesNotFillIn()
    {
        var outcome = Measurement.Evaluate(Astm, Read(70.0m), Good, Authority.Epa, PressureUnit.Kilopascal, Entered());

        Assert.Null(outcome.Reproducibility);
    }

    // EPA's rule in psi on a reading of 67.775 kPa (9.83 psi): unit first, then the constants of the limit's unit.
    [Fact]
    public void ResultInUnit_LimitInPsi_UsesPsiConstants()
    {
        var total = AbsolutePressure.From(9.83m, PressureUnit.Psi);
        var inKpa = AbsolutePressure.From(total.In(PressureUnit.Kilopascal), PressureUnit.Kilopascal);

        var result = Measurement.ResultInUnit(Astm, new Readings { TotalPressure = inKpa }, null, Correlations.Named("EPA")!, PressureUnit.Psi)!;

        Assert.Equal(9.05048m, Rounding.ToPlaces(result.Value, 12));
        Assert.Equal("RVP = 0.956 · Ptot − 0.347 psi", result.Equation);
        Assert.Null(Measurement.ResultInUnit(Astm, Read(0.1m, PressureUnit.Psi), null, Correlations.Named("EPA")!, PressureUnit.Psi));
        Assert.Throws<ArgumentException>(() => Measurement.ResultInUnit(European, new Readings { TotalPressure = inKpa }, null, Correlations.Named("EPA")!, PressureUnit.Psi));
    }

    private static Readings Read(decimal value, PressureUnit unit = PressureUnit.Kilopascal) =>
        new() { TotalPressure = AbsolutePressure.From(value, unit) };

    private static PrecisionStatement Entered() => new(
        "ASTM D5191", "22", "DVPE", null, null, null, null, PressureUnit.Kilopascal,
        new LinearForm(1.5m, 0m), new LinearForm(3.0m, 0m), "invented for this test", FactStatus.Laboratory);
}
