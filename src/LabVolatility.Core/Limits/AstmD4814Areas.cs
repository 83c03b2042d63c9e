using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>The vapour-pressure classes of ASTM D4814.</summary>
internal static class AstmD4814Areas
{
    public static IEnumerable<Area> Read() => PublishedTable.Read("astm-d4814.csv").Select(row =>
    {
        var code = row.Text("code");
        var limit = new Limit(
            $"{code}/DVPE", "DVPE", null, null, row.Number("maximum"), "kPa", 0,
            [TestMethods.AstmD5191, "ASTM D4953", "ASTM D5482", "ASTM D6378"], TestMethods.AstmD5191,
            new NoAllowance(), Standing.Contract, row.Text("source"), row.Status("status"), null, null, true, row.Text("note"));
        return new Area(
            code, row.Text("name"), false, [], [new AreaLimit(limit)],
            row.Text("source"), row.Status("status"), row.Text("note"));
    });
}
