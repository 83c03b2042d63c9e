using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

/// <summary>ASTM D6378 and EN 13016-3: results and findings of one determination.</summary>
public sealed class ExpansionMethodTests
{
    private static readonly TestMethod Astm = Method("ASTM D6378");
    private static readonly TestMethod European = Method("EN 13016-3");
    private static readonly SampleCondition Litre = new(SampleKind.Gasoline, ContainerKind.GlassBottle, Volume.From(1m, VolumeUnit.Litre), 75m);
    private static readonly Readings Given = new()
    {
        TotalPressure = Kpa(67.9m),
        GasPressure = Kpa(2.7m),
        Temperature = Celsius(37.8m),
        VaporLiquidRatio = 4.00m,
        IntroductionTemperature = Celsius(20m),
        RinseCycles = 3,
        ConsecutiveDeterminations = 1,
        AtEquilibrium = true,
        FirstTestOnContainer = true,
    };

    private static readonly Readings Expanded = Given with
    {
        GasPressure = null,
        LiquidVolume = Volume.From(1m, VolumeUnit.Millilitre),
        Expansions =
        [
            new(Volume.From(1.8m, VolumeUnit.Millilitre), Kpa(65.3m)), new(Volume.From(2.6m, VolumeUnit.Millilitre), Kpa(60.8m)),
            new(Volume.From(5m, VolumeUnit.Millilitre), Kpa(57.5m)),
        ],
    };

    // 67.9 − 2.7 = 65.2; − 1.005 for 1 L and − 0.751 for 250 mL (ASTM D6378-22, predicted DVPE).
    [Theory]
    [InlineData(1000, "64.195", "64.2"), InlineData(250, "64.449", "64.4")]
    public void Evaluate_GasAsGiven_PredictsTheDvpeByContainer(int millilitres, string value, string reported)
    {
        var outcome = Evaluate(Astm, Given, Litre with { ContainerVolume = Volume.From(millilitres, VolumeUnit.Millilitre) });

        Assert.Empty(outcome.Findings);
        Assert.Equal(["Ptot", "Pgas", "VP4", "DVPE"], outcome.Results.Select(r => r.Quantity));
        Assert.Equal([67.9m, 2.7m, 65.2m, decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture)], outcome.Results.Select(r => r.Value));
        Assert.Equal((reported, "ASTM D6378", "ASTM D6378-22, predicted DVPE"), (outcome.Results[3].Reported, outcome.Results[3].Correlation, outcome.Results[3].CorrelationVersion));
    }

    // 9.85 − 0.39 = 9.46 psi, − 0.15 psi as printed: no constant is converted.
    [Fact]
    public void Evaluate_InPsi_TakesThePsiConstant()
    {
        var readings = Given with { TotalPressure = AbsolutePressure.From(9.85m, PressureUnit.Psi), GasPressure = AbsolutePressure.From(0.39m, PressureUnit.Psi) };

        var outcome = Measurement.Evaluate(Astm, readings, Litre, Authority.Astm, PressureUnit.Psi);

        Assert.Equal(9.31m, outcome.Results[3].Value);
        Assert.Equal(("9.31", "DVPE = VP4 − 0.15 psi", FactStatus.FromMemory), (outcome.Results[3].Reported, outcome.Results[3].Equation, outcome.Results[3].Status));
    }

    // A gas pressure as given is at the test temperature already: the temperature of taking in doesn't move it.
    [Fact]
    public void Evaluate_GasAsGiven_IsNeverRescaled() => Assert.Equal(
        Evaluate(Astm, Given, Litre).Results.Select(r => r.Value),
        Evaluate(Astm, Given with { IntroductionTemperature = Celsius(30m) }, Litre).Results.Select(r => r.Value));

    // 2.5235 kPa at 20 °C is 2.5235 · 311/293.2 = 2.6767 kPa at 37.8 °C.
    [Fact]
    public void Evaluate_Expansions_WorkTheGasPartOut()
    {
        var outcome = Evaluate(Astm, Expanded, Litre);

        Assert.Empty(outcome.Findings);
        Assert.Equal(2.6767m, Rounding.ToPlaces(outcome.Results[1].Value, 4));
        Assert.Equal(65.2233m, Rounding.ToPlaces(outcome.Results[2].Value, 4));
        Assert.Equal("Pgas = (TP1 − TP3)/(Q − 1) · (273.2 + t)/(273.2 + ti)", outcome.Results[1].Equation);
        Assert.Contains(outcome.Results[3].Arithmetic, step => step.Label == "Gas solubility");
        Assert.All(outcome.Results.SelectMany(r => r.Arithmetic), step => Assert.NotEmpty(step.Source));
    }

    [Theory]
    [InlineData(SampleKind.AviationTurbine), InlineData(SampleKind.Solvent), InlineData(SampleKind.PureCompound)]
    public void Evaluate_NoFuel_GivesVp4WithoutDvpe(SampleKind kind)
    {
        var outcome = Evaluate(Astm, Given, Litre with { Kind = kind });

        Assert.Equal("VP4", outcome.Results[^1].Quantity);
        Assert.True(outcome.MayReport);
        Assert.Equal((FindingCodes.NoCorrelation, FindingSeverity.Warning), (outcome.Findings.Single().Code, outcome.Findings.Single().Severity));
    }

    [Fact]
    public void Evaluate_OtherContainer_SaysWhyThereIsNoDvpe()
    {
        var outcome = Evaluate(Astm, Given, Litre with { ContainerVolume = Volume.From(500m, VolumeUnit.Millilitre) });

        Assert.Equal("VP4", outcome.Results[^1].Quantity);
        Assert.Contains(outcome.Findings, f => f.Code == FindingCodes.NoCorrelation && f.Message.Contains("500 mL", StringComparison.Ordinal));
        Assert.Contains(Evaluate(Astm, Given, Litre with { ContainerVolume = null }).Findings, f => f.Code == FindingCodes.NoCorrelation);
    }

    [Fact]
    public void Evaluate_EuropeanWithoutOwnCorrelation_GivesVp4AndSaysWhy()
    {
        var outcome = Evaluate(European, Given, Litre);

        Assert.Equal(["Ptot", "Pgas", "VP4"], outcome.Results.Select(r => r.Quantity));
        Assert.Contains("a second person approves it", outcome.Findings.Single().Message, StringComparison.Ordinal);
    }

    // 0.98 · 67.9 − 0.9 · 2.7 + 0.3 = 64.412, worked by hand.
    [Fact]
    public void Evaluate_EuropeanWithOwnCorrelation_GivesItsDvpe()
    {
        var own = new Correlation("EN 13016-3", Authority.En, "EN 13016-3", "DVPE", "EN 13016-3, own no. 1", "Ptot",
            [new(PressureUnit.Kilopascal, 0.98m, -0.3m, "own copy, clause 12", FactStatus.Laboratory) { GasSlope = -0.9m }]);

        var result = Measurement.Evaluate(European, Given, Litre, Authority.En, PressureUnit.Kilopascal, null, own).Results[^1];

        Assert.Equal(("DVPE", 64.412m, "64.4"), (result.Quantity, result.Value, result.Reported));
        Assert.Equal(("DVPE = 0.98 · Ptot − 0.9 · Pgas + 0.3 kPa", FactStatus.Laboratory), (result.Equation, result.Status));
        Assert.Equal("0.98 · 67.9 − 0.9 · 2.7 + 0.3", result.Arithmetic.Single(s => s.Label == "Correlation").Expression);
    }

    [Theory]
    [InlineData(true), InlineData(false), InlineData(null)]
    public void Evaluate_AirSaturated_IsNoMatterHere(bool? airSaturated) =>
        Assert.Empty(Evaluate(Astm, Given, Litre with { AirSaturated = airSaturated }).Findings);

    public static TheoryData<string, Readings, SampleCondition, string, FindingSeverity> Findings => new()
    {
        { "no gas part", Given with { GasPressure = null }, Litre, FindingCodes.ReadingMissing, FindingSeverity.Blocking },
        { "gas above total", Given with { GasPressure = Kpa(68m) }, Litre, FindingCodes.GasPressureImplausible, FindingSeverity.Blocking },
        { "much gas", Given with { GasPressure = Kpa(15.1m) }, Litre, FindingCodes.GasPressureImplausible, FindingSeverity.Warning },
        { "no physical solution", Expanded with { Expansions = [.. Expanded.Expansions.Select(e => e with { Pressure = Kpa(60m - e.Volume.Value) })] }, Litre, FindingCodes.GasPressureImplausible, FindingSeverity.Blocking },
        { "ratio by the volumes", Expanded with { LiquidVolume = Volume.From(1.7m, VolumeUnit.Millilitre), VaporLiquidRatio = null }, Litre, FindingCodes.RatioOff, FindingSeverity.Blocking },
        { "solubility of 0.7", Expanded with { Expansions = [.. Expanded.Expansions.Zip([62.8333m, 60.1087m, 57.5m], (e, p) => e with { Pressure = Kpa(p) })] }, Litre, FindingCodes.GasPressureImplausible, FindingSeverity.Warning },
        { "ratio", Given with { VaporLiquidRatio = 4.06m }, Litre, FindingCodes.RatioOff, FindingSeverity.Blocking },
        { "temperature", Given with { Temperature = Celsius(37.95m) }, Litre, FindingCodes.TemperatureOff, FindingSeverity.Blocking },
        { "two rinses", Given with { RinseCycles = 2 }, Litre, FindingCodes.SettingsOff, FindingSeverity.Warning },
        { "taken in cold", Given with { IntroductionTemperature = Celsius(19.9m) }, Litre, FindingCodes.SettingsOff, FindingSeverity.Blocking },
        { "taken in hot", Given with { IntroductionTemperature = Celsius(37.9m) }, Litre, FindingCodes.SettingsOff, FindingSeverity.Blocking },
        { "repeated", Given with { ConsecutiveDeterminations = 3 }, Litre, FindingCodes.SettingsOff, FindingSeverity.Warning },
        { "moving", Given with { AtEquilibrium = false }, Litre, FindingCodes.NotAtEquilibrium, FindingSeverity.Blocking },
        { "fill", Given, Litre with { FillPercent = 69m }, FindingCodes.FillLevel, FindingSeverity.Blocking },
        { "overfull", Given, Litre with { FillPercent = 81m }, FindingCodes.FillLevel, FindingSeverity.Warning },
        { "small", Given, Litre with { ContainerVolume = Volume.From(100m, VolumeUnit.Millilitre) }, FindingCodes.Container, FindingSeverity.Blocking },
        { "crude", Given, Litre with { Kind = SampleKind.CrudeDead }, FindingCodes.OutsideScope, FindingSeverity.Blocking },
        { "cylinder", Given, Litre with { Container = ContainerKind.FloatingPistonCylinder }, FindingCodes.Container, FindingSeverity.Blocking },
        { "hazy", Given, Litre with { Hazy = true }, FindingCodes.Hazy, FindingSeverity.Warning },
        { "two phases", Given, Litre with { Phases = 2 }, FindingCodes.TwoPhases, FindingSeverity.Blocking },
        { "not the first test", Given with { FirstTestOnContainer = false }, Litre, FindingCodes.FirstTest, FindingSeverity.Blocking },
        { "above the scope", Given with { TotalPressure = Kpa(152.8m) }, Litre, FindingCodes.OutsideScope, FindingSeverity.Warning },
        { "below zero", Given with { TotalPressure = Kpa(3.0m) }, Litre, FindingCodes.OutsideScope, FindingSeverity.Blocking },
    };

    [Theory, MemberData(nameof(Findings))]
    public void Evaluate_EachDeparture_IsFound(string departure, Readings readings, SampleCondition sample, string code, FindingSeverity severity)
    {
        var findings = Evaluate(Astm, readings, sample).Findings;

        Assert.True(findings.Any(f => f.Code == code && f.Severity == severity), $"{departure}: {string.Join("; ", findings)}");
    }

    // Both ends of each range belong to it.
    [Theory]
    [InlineData(20, 37.7, 3.95), InlineData(37.8, 37.9, 4.05)]
    public void Evaluate_SettingsAtTheirEnds_PassWithoutRemark(double introduction, double test, double ratio) => Assert.Empty(Evaluate(
        Astm,
        Given with { IntroductionTemperature = Celsius((decimal)introduction), Temperature = Celsius((decimal)test), VaporLiquidRatio = (decimal)ratio },
        Litre).Findings);

    // 150.0 kPa is the end of the scope for fuels; aviation turbine fuel ends at 110 (ASTM D6378-10 (2016)).
    [Fact]
    public void Evaluate_AviationTurbine_HasAScopeOfItsOwn()
    {
        var readings = Given with { TotalPressure = Kpa(112.8m) };

        Assert.DoesNotContain(Evaluate(Astm, readings, Litre).Findings, f => f.Code == FindingCodes.OutsideScope);
        Assert.Contains(Evaluate(Astm, readings, Litre with { Kind = SampleKind.AviationTurbine }).Findings, f => f.Code == FindingCodes.OutsideScope);
    }

    // The European scope speaks of the DVPE (EN 13016-3:2025: 15.7 to 97.6 kPa): without one nothing can be said of it.
    [Fact]
    public void Evaluate_EuropeanScope_NeedsTheDvpe()
    {
        var own = new Correlation("EN 13016-3", Authority.En, "EN 13016-3", "DVPE", "own no. 1", "VP4", [new(PressureUnit.Kilopascal, 1m, 1m, "own", FactStatus.Laboratory)]);
        var readings = Given with { TotalPressure = Kpa(101.4m) };

        Assert.DoesNotContain(Evaluate(European, readings, Litre).Findings, f => f.Code == FindingCodes.OutsideScope);
        Assert.Contains(Measurement.Evaluate(European, readings, Litre, Authority.En, PressureUnit.Kilopascal, null, own).Findings, f => f.Code == FindingCodes.OutsideScope);
    }

    [Fact]
    public void PrecisionQuantities_OfAnExpansion_LeaveTheReadingsOut() => Assert.Equal(["VP4", "DVPE"], Astm.PrecisionQuantities);

    // A limit names the methods that may answer it; the correlation is part of the quantity.
    [Theory]
    [InlineData("D4814-A", "ASTM D6378", true), InlineData("EN228-A", "EN 13016-3", true), InlineData("EN228-A", "ASTM D6378", false), InlineData("US-9.0", "ASTM D6378", false)]
    public void Refusal_OfALimit_FollowsItsMethods(string area, string method, bool answers)
    {
        var limit = PublishedAreas.All.First(a => a.Code == area).Limits[0].Limit;

        Assert.Equal(answers, LimitAnswer.Refusal(limit, new MeasuredResult("DVPE", 60m, "kPa", method)) is null);
    }

    private static MethodOutcome Evaluate(TestMethod method, Readings readings, SampleCondition sample) =>
        Measurement.Evaluate(method, readings, sample, method.DefaultAuthority, PressureUnit.Kilopascal);

    private static AbsolutePressure Kpa(decimal value) => AbsolutePressure.From(value, PressureUnit.Kilopascal);

    private static Temperature Celsius(decimal value) => Temperature.From(value, TemperatureUnit.Celsius);

    private static TestMethod Method(string designation) =>
        TestMethods.TryFind(designation, out var method) ? method : throw new InvalidOperationException(designation);
}
