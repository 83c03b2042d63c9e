namespace LabVolatility.Core.Limits;

/// <summary>The areas and classes that ship.</summary>
/// <remarks>
/// Source: 40 CFR 1090.215; EN 228:2012+A1:2017; Directive 98/70/EC as amended by 2009/30/EC and 2011/63/EU;
/// ASTM D4814-24. The tables stand under Published, each naming its source and the status of every figure.
/// </remarks>
public static class PublishedAreas
{
    /// <summary>All that ship: United States, EN 228, ASTM D4814.</summary>
    public static IReadOnlyList<Area> All { get; } =
        [.. UnitedStatesAreas.Read(), .. En228Areas.Read(), .. AstmD4814Areas.Read()];
}
