using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>The volatility classes of EN 228, and class A with the bioethanol allowance.</summary>
internal static class En228Areas
{
    private const string WithAllowance = "EN228-A-W";

    /// <summary>Most oxygen of the grade with more of it, % (m/m).</summary>
    private const string MoreOxygen = "3.7";

    /// <summary>Most ethanol of the grade with at most 2.7 % (m/m) oxygen, % (V/V).</summary>
    private const decimal LessEthanol = 5.0m;

    public static IEnumerable<Area> Read() =>
        PublishedTable.Read("en-228.csv").GroupBy(row => row.Text("code")).Select(rows => Read(rows.Key, [.. rows]));

    private static Area Read(string code, IReadOnlyList<PublishedRow> rows)
    {
        var first = rows[0];
        var derogation = code == WithAllowance;
        return new Area(
            code, first.Text("name"), derogation, [],
            [.. rows.Select(row => new AreaLimit(LimitOf(code, row, derogation), Ethanol: EthanolOf(row.Text("oxygen"))))],
            first.Text("source"), first.Status("status"), first.Text("note"));
    }

    private static Limit LimitOf(string code, PublishedRow row, bool derogation)
    {
        var quantity = row.Text("quantity");
        var isPressure = quantity == "DVPE";
        return new Limit(
            row.Text("oxygen") == MoreOxygen ? $"{code}/{quantity}/E10" : $"{code}/{quantity}", quantity, null, row.NumberOrNone("minimum"), row.NumberOrNone("maximum"),
            row.Text("unit"), (int)row.Number("digits"),
            isPressure ? [TestMethods.En13016Part1, "EN 13016-3"] : [],
            isPressure ? TestMethods.En13016Part1 : null,
            isPressure && derogation ? Bioethanol() : new NoAllowance(),
            Standing.Legal, row.Text("source"), row.Status("status"), null, null, isPressure, row.Text("note"));
    }

    // Gasoline says which of the two grades it is by what it holds: more than 5 % (V/V) ethanol is only in the one.
    private static EthanolRange? EthanolOf(string oxygen) => oxygen switch
    {
        "" => null,
        MoreOxygen => new EthanolRange(LessEthanol, null),
        _ => new EthanolRange(null, LessEthanol),
    };

    private static TableAllowance Bioethanol() => new(
        [.. PublishedTable.Read("eu-bioethanol.csv").Select(row => new AllowancePoint(row.Number("ethanol"), row.Number("allowance")))],
        "Directive 98/70/EC, annex III as amended by 2011/63/EU",
        RequiresDerogation: true);
}
