using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The test methods that ship.</summary>
/// <remarks>Source: named in each method's Sources, with how well it is known.</remarks>
public static class TestMethods
{
    /// <summary>Designation of the mini method of ASTM.</summary>
    public const string AstmD5191 = "ASTM D5191";

    /// <summary>Designation of the air-saturated mini method of CEN.</summary>
    public const string En13016Part1 = "EN 13016-1";

    /// <summary>Designation of the triple-expansion method of ASTM.</summary>
    public const string AstmD6378 = "ASTM D6378";

    /// <summary>Designation of the triple-expansion method of CEN.</summary>
    public const string En13016Part3 = "EN 13016-3";

    /// <summary>All that ship.</summary>
    public static IReadOnlyList<TestMethod> All { get; } =
    [
        new()
        {
            Designation = AstmD5191,
            Edition = "22",
            Title = "Vapour pressure of gasoline and gasoline-oxygenate blends, mini method",
            TotalSymbol = "Ptot",
            Quantities = ["Ptot", "DVPE", "RVP"],
            Scope = new("Ptot", 7m, 130m, 1.0m, 18.6m, "ASTM D5191-19, scope", FactStatus.Published),
            NominalTemperature = Temperature.From(37.8m, TemperatureUnit.Celsius),
            TemperatureTolerance = 0.1m,
            NominalRatio = 4.00m,
            RatioTolerance = 0.05m,
            DefaultAuthority = Authority.Astm,
            Authorities = [Authority.Astm, Authority.Epa, Authority.Carb],
            OneTestPerContainer = true,
            MinimumContainerVolume = Volume.From(125m, VolumeUnit.Millilitre),
            PrecisionContainerVolumes =
                [Volume.From(1m, VolumeUnit.Litre), Volume.From(250m, VolumeUnit.Millilitre)],
            Kinds = BottleMethod.Kinds,
            Containers = BottleMethod.Containers,
            Handling = BottleMethod.Handling("ASTM D5191-22, sampling and sample preparation"),
            Cautions = BottleMethod.Cautions,
            Status = FactStatus.FromMemory,
            Sources =
            [
                "ASTM D5191-22, equation 1 (kPa published, psi from memory)",
                "ASTM D5191-19, scope (published)",
                "ASTM D5191-22, apparatus: 37.8 ± 0.1 °C as published for ASTM D5482, ratio 3.95 to 4.05",
                "ASTM D5842, sampling (published)",
            ],
        },
        new()
        {
            Designation = En13016Part1,
            Edition = "2024",
            Title = "Air-saturated vapour pressure (ASVP) and the dry vapour pressure equivalent (DVPE) from it",
            TotalSymbol = "ASVP",
            Quantities = ["ASVP", "DVPE"],
            Scope = new("DVPE", 15.5m, 106.0m, null, null, "EN 13016-1:2024, scope", FactStatus.Published),
            NominalTemperature = Temperature.From(37.8m, TemperatureUnit.Celsius),
            TemperatureTolerance = 0.1m,
            NominalRatio = 4.00m,
            RatioTolerance = 0.05m,
            DefaultAuthority = Authority.En,
            Authorities = [Authority.En],
            OneTestPerContainer = true,
            MinimumContainerVolume = Volume.From(50m, VolumeUnit.Millilitre),
            PrecisionContainerVolumes =
                [Volume.From(1m, VolumeUnit.Litre), Volume.From(250m, VolumeUnit.Millilitre)],
            Kinds = BottleMethod.Kinds,
            Containers = BottleMethod.Containers,
            Handling = BottleMethod.Handling("EN 13016-1:2024, sampling and sample preparation"),
            Cautions = BottleMethod.Cautions,
            Status = FactStatus.FromMemory,
            Sources =
            [
                "EN 13016-1:2024, scope (published)",
                "EN 13016-1:2024, calculation of DVPE (from memory; the constants of ASTM D5191)",
                "EN 13016-1:2007, annex A: 50 mL containers (published)",
                "EN 13016-1:2024, apparatus settings taken as those of ASTM D5191 (from memory)",
            ],
        },
        new()
        {
            Designation = AstmD6378,
            Edition = "22",
            Title = "Vapour pressure (VP4) by triple expansion, without air saturation, and the predicted DVPE",
            TotalSymbol = "Ptot",
            Quantities = ["Ptot", GasPart.Symbol, Correlation.VaporPressure, "DVPE"],
            Scope = new(Correlation.VaporPressure, 7m, 150m, 1.0m, 21m, "ASTM D6378-22, scope", FactStatus.Published),
            AviationScope = new(Correlation.VaporPressure, 0m, 110m, 0m, 15.5m, "ASTM D6378-10 (2016), scope for aviation turbine fuel", FactStatus.Published),
            NominalTemperature = Temperature.From(37.8m, TemperatureUnit.Celsius),
            TemperatureTolerance = 0.1m,
            NominalRatio = 4.00m,
            RatioTolerance = 0.05m,
            Expansion = ExpansionMethod.Settings,
            DefaultAuthority = Authority.Astm,
            Authorities = [Authority.Astm],
            OneTestPerContainer = true,
            MinimumContainerVolume = Volume.From(125m, VolumeUnit.Millilitre),
            PrecisionContainerVolumes =
                [Volume.From(1m, VolumeUnit.Litre), Volume.From(250m, VolumeUnit.Millilitre)],
            Kinds = BottleMethod.Kinds,
            Containers = BottleMethod.Containers,
            Handling = ExpansionMethod.Handling("ASTM D6378-22, procedure", FactStatus.Published),
            Cautions = ExpansionMethod.Cautions,
            Status = FactStatus.FromMemory,
            Sources =
            [
                "ASTM D6378-22, scope, rinses, taking in, equilibrium, temperature step (published)",
                "ASTM D6378-22, gas part: solved from its six readings, since the printed form isn't public",
                "ASTM D6378-22, predicted DVPE for 1 L and 250 mL containers (kPa published, psi from memory)",
                "ASTM D6378-22, fill level and first test as ASTM D5191 (from memory)",
                "ASTM D5842, sampling: 125 mL and larger (published)",
            ],
        },
        new()
        {
            Designation = En13016Part3,
            Edition = "2025",
            Title = "Vapour pressure (VP4) by triple expansion, without air saturation, and the DVPE from it",
            TotalSymbol = "Ptot",
            Quantities = ["Ptot", GasPart.Symbol, Correlation.VaporPressure, "DVPE"],
            Scope = new("DVPE", 15.7m, 97.6m, null, null, "EN 13016-3:2025, scope", FactStatus.Published),
            NominalTemperature = Temperature.From(37.8m, TemperatureUnit.Celsius),
            TemperatureTolerance = 0.1m,
            NominalRatio = 4.00m,
            RatioTolerance = 0.05m,
            Expansion = ExpansionMethod.Settings,
            DefaultAuthority = Authority.En,
            Authorities = [Authority.En],
            OneTestPerContainer = true,
            MinimumContainerVolume = Volume.From(125m, VolumeUnit.Millilitre),
            PrecisionContainerVolumes = [],
            Kinds = BottleMethod.Kinds,
            Containers = BottleMethod.Containers,
            Handling = ExpansionMethod.Handling("EN 13016-3:2025, procedure, taken as that of ASTM D6378", FactStatus.FromMemory),
            Cautions = ExpansionMethod.Cautions,
            Status = FactStatus.FromMemory,
            Sources =
            [
                "EN 13016-3:2025, scope (published); the edition of 2018 covers 13.7 to 98.3 kPa",
                "EN 13016-3:2025, no air saturation, ratio 4, 37.8 °C (published)",
                "EN 13016-3:2025, procedure and gas part taken as those of ASTM D6378-22 (from memory)",
                "The correlation from VP4 to DVPE and the precision aren't public: the laboratory enters them from its own copy",
                "ASTM D5842, sampling: 125 mL and larger (published)",
            ],
        },
    ];

    /// <summary>Finds a method by its designation, without edition; false where none ships.</summary>
    /// <param name="designation">For example "ASTM D5191".</param>
    /// <param name="method">The method.</param>
    public static bool TryFind(string? designation, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out TestMethod? method)
    {
        method = All.FirstOrDefault(candidate => candidate.Designation == designation);
        return method is not null;
    }
}
