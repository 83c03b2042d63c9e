using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>The federal levels of the United States.</summary>
internal static class UnitedStatesAreas
{
    private const string Summer = "summer";

    public static IEnumerable<Area> Read() => PublishedTable.Read("us-rvp.csv").Select(row =>
    {
        var code = row.Text("code");
        var limit = new Limit(
            $"{code}/RVP", "RVP", "EPA", null, row.Number("maximum"), "psi", 1,
            [TestMethods.AstmD5191], null, AllowanceOf(row), Standing.Legal, row.Text("source"), row.Status("status"),
            null, null, true, row.Text("note"));
        return new Area(
            code, row.Text("name"), false, Calendar(), [new AreaLimit(limit, Season: Summer)],
            row.Text("source"), row.Status("status"), row.Text("note"));
    });

    private static Allowance AllowanceOf(PublishedRow row) =>
        row.NumberOrNone("allowance") is { } amount
            ? new FixedAllowance(amount, row.Number("ethanol_low"), row.Number("ethanol_high"), "40 CFR 1090.215(b)")
            : new NoAllowance();

    private static IReadOnlyList<SeasonWindow> Calendar() =>
    [
        .. PublishedTable.Read("us-season.csv").Select(row =>
        {
            _ = PointsOfCompliance.TryParse(row.Text("point"), out var point);
            return new SeasonWindow(
                Summer,
                new MonthDay((int)row.Number("from_month"), (int)row.Number("from_day")),
                new MonthDay((int)row.Number("until_month"), (int)row.Number("until_day")),
                point);
        }),
    ];
}
