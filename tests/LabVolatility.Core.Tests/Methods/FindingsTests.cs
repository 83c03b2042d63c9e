using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

public sealed class FindingsTests
{
    private static readonly TestMethod Astm = TestMethods.All[0];
    private static readonly SampleCondition Good = new(
        SampleKind.Gasoline, ContainerKind.GlassBottle, Volume.From(1m, VolumeUnit.Litre), 75m, AirSaturated: true);
    private static readonly Readings Usual = new() { TotalPressure = AbsolutePressure.From(70m, PressureUnit.Kilopascal) };

    // Settings and handling of ASTM D5191 (facts from memory where the methods page says so); ends are included.
    public static TheoryData<decimal, bool> Temperatures => new() { { 37.69m, true }, { 37.7m, false }, { 37.9m, false }, { 37.91m, true } };

    public static TheoryData<decimal, bool> Ratios => new() { { 3.94m, true }, { 3.95m, false }, { 4.05m, false }, { 4.06m, true } };

    public static TheoryData<decimal, FindingSeverity?> Fills => new()
    {
        { 69.9m, FindingSeverity.Blocking }, { 70m, null }, { 80m, null }, { 80.1m, FindingSeverity.Warning },
    };

    public static TheoryData<decimal, PressureUnit, bool> Scopes => new()
    {
        { 6.9m, PressureUnit.Kilopascal, true }, { 7m, PressureUnit.Kilopascal, false }, { 130m, PressureUnit.Kilopascal, false },
        { 130.1m, PressureUnit.Kilopascal, true }, { 1.0m, PressureUnit.Psi, false }, { 18.6m, PressureUnit.Psi, false }, { 18.7m, PressureUnit.Psi, true },
    };

    [Theory, MemberData(nameof(Temperatures))]
    public void Temperature_OffItsSetting_Blocks(decimal celsius, bool isOff) =>
        Expect(isOff ? FindingSeverity.Blocking : null, FindingCodes.TemperatureOff, Usual with { Temperature = Temperature.From(celsius, TemperatureUnit.Celsius) }, Good);

    [Fact]
    public void Temperature_HundredFahrenheit_IsTheSetting() =>
        Expect(null, FindingCodes.TemperatureOff, Usual with { Temperature = Temperature.From(100m, TemperatureUnit.Fahrenheit) }, Good);

    [Theory, MemberData(nameof(Ratios))]
    public void Ratio_OffItsSetting_Blocks(decimal ratio, bool isOff) =>
        Expect(isOff ? FindingSeverity.Blocking : null, FindingCodes.RatioOff, Usual with { VaporLiquidRatio = ratio }, Good);

    [Theory, MemberData(nameof(Fills))]
    public void Fill_OutsideSeventyToEighty_IsFound(decimal percent, FindingSeverity? severity) =>
        Expect(severity, FindingCodes.FillLevel, Usual, Good with { FillPercent = percent });

    [Theory, MemberData(nameof(Scopes))]
    public void Scope_Outside_Warns(decimal value, PressureUnit unit, bool isOutside) =>
        Expect(isOutside ? FindingSeverity.Warning : null, FindingCodes.OutsideScope, new Readings { TotalPressure = AbsolutePressure.From(value, unit) }, Good);

    // EN 13016-1:2024 speaks of DVPE: 15.5 kPa is reached at an ASVP of 19.979 kPa.
    [Theory, InlineData("19.97", true), InlineData("19.98", false), InlineData("113.76", false), InlineData("113.77", true)]
    public void Scope_European_IsOfDvpe(string asvp, bool isOutside)
    {
        var readings = new Readings { TotalPressure = AbsolutePressure.From(asvp.Number(), PressureUnit.Kilopascal) };

        var findings = Measurement.Evaluate(TestMethods.All[1], readings, Good, Authority.En, PressureUnit.Kilopascal).Findings;

        Assert.Equal(isOutside, findings.Any(f => f.Code == FindingCodes.OutsideScope));
    }

    [Theory]
    [InlineData(SampleKind.Lpg), InlineData(SampleKind.CrudeLive), InlineData(SampleKind.CrudeDead)]
    public void Kind_NotOfTheMethod_Blocks(SampleKind kind) =>
        Expect(FindingSeverity.Blocking, FindingCodes.OutsideScope, Usual, Good with { Kind = kind });

    [Theory]
    [InlineData(ContainerKind.PressureCylinder), InlineData(ContainerKind.FloatingPistonCylinder), InlineData(ContainerKind.ManualPistonCylinder)]
    public void Container_Closed_Blocks(ContainerKind container) =>
        Expect(FindingSeverity.Blocking, FindingCodes.Container, Usual, Good with { Container = container });

    [Theory]
    [InlineData(100, FindingSeverity.Blocking), InlineData(125, FindingSeverity.Warning), InlineData(250, null), InlineData(500, FindingSeverity.Warning), InlineData(1000, null)]
    public void ContainerVolume_NotOfThePrecision_IsFound(int millilitres, FindingSeverity? severity) =>
        Expect(severity, FindingCodes.Container, Usual, Good with { ContainerVolume = Volume.From(millilitres, VolumeUnit.Millilitre) });

    [Theory, InlineData(true, null), InlineData(false, FindingSeverity.Blocking), InlineData(null, FindingSeverity.Warning)]
    public void AirSaturation_NotMadeOrNotStated_IsFound(bool? saturated, FindingSeverity? severity) =>
        Expect(severity, FindingCodes.NotAirSaturated, Usual, Good with { AirSaturated = saturated });

    [Fact]
    public void Phases_Two_Block() => Expect(FindingSeverity.Blocking, FindingCodes.TwoPhases, Usual, Good with { Phases = 2 });

    [Fact]
    public void Pressure_StillMoving_Blocks() => Expect(FindingSeverity.Blocking, FindingCodes.NotAtEquilibrium, Usual with { AtEquilibrium = false }, Good);

    [Fact]
    public void Container_OpenedBefore_Blocks() => Expect(FindingSeverity.Blocking, FindingCodes.FirstTest, Usual with { FirstTestOnContainer = false }, Good);

    [Theory, InlineData("1.1", FindingSeverity.Blocking), InlineData("1.0", null), InlineData("0", null), InlineData("-0.5", FindingSeverity.Warning)]
    public void Chilling_OffZeroToOne_IsFound(string celsius, FindingSeverity? severity) =>
        Expect(severity, FindingCodes.NotChilled, Usual with { ChilledTo = Temperature.From(celsius.Number(), TemperatureUnit.Celsius) }, Good);

    private static void Expect(FindingSeverity? severity, string code, Readings readings, SampleCondition sample)
    {
        var outcome = Measurement.Evaluate(Astm, readings, sample, Authority.Astm, PressureUnit.Kilopascal);

        var found = outcome.Findings;
        Assert.All(found, finding => Assert.Equal(code, finding.Code));
        Assert.Equal(severity, found.Count == 0 ? null : Assert.Single(found).Severity);
        Assert.Equal(severity != FindingSeverity.Blocking, outcome.MayReport);
    }
}
