using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Limits;

/// <summary>What limits there are: places, grades, limits.</summary>
internal static class CatalogueEndpoints
{
    public static void MapCatalogueOfLimits(this IEndpointRouteBuilder api)
    {
        api.MapGet("/catalogue/areas", async (LimitCatalogue catalogue, CancellationToken cancel) =>
                TypedResults.Ok(new AreasAnswer([.. (await catalogue.Run(cancel)).Select(AreaAnswer.Of)])))
            .Called("listAreas", "Places and classes with limits of their own").Needs(KeyScopes.Read);
        api.MapGet("/catalogue/grades", async (GradesInUse grades, CancellationToken cancel) =>
                TypedResults.Ok(new GradesAnswer([.. SampleKinds.All.Select(k => k.Text())], [.. (await grades.Run(cancel)).Select(GradeAnswer.Of)])))
            .Called("listGrades", "What a product may be called").Needs(KeyScopes.Read);
        api.MapGet("/catalogue/limits", ListAsync)
            .Called("listLimits", "Limits, of one area or grade, on one day")
            .Needs(KeyScopes.Read).Refuses(400).Produces<LimitsAnswer>()
            .Asks("area", "Code of an area.").Asks("grade", "What it is, or a grade of the laboratory.").Asks("date", "Only limits that hold on this local date.", "date");
    }

    private static async Task<IResult> ListAsync(HttpContext http, LimitCatalogue catalogue, GradesInUse gradesInUse)
    {
        var mistakes = new Mistakes();
        var query = new QueryText(http.Request.Query, mistakes, "area", "grade", "date");
        query.Check();
        var (date, code, grade) = (query.Date("date"), query["area"], query["grade"]);
        var areas = await catalogue.Run(http.RequestAborted);
        if (code is not null && areas.All(a => a.Code != code))
            mistakes.Add("/area", $"There is no such area; there are {string.Join(", ", areas.Select(a => a.Code))}.");
        var grades = await gradesInUse.Run(http.RequestAborted);
        var kind = SampleKinds.TryParse(grade, out var named) ? named : grades.FirstOrDefault(g => g.Code == grade)?.Kind;
        if (grade is not null && kind is null)
            mistakes.Add("/grade", "There is no such grade.");
        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        var asked = areas.Where(a => code is null || a.Code == code);
        return TypedResults.Ok(new LimitsAnswer([.. date is { } day
            ? asked.SelectMany(a => On(areas, a, grade, kind ?? SampleKind.Gasoline, day))
            : asked.SelectMany(a => a.Limits.Where(l => grade is null || Holds(l, grade, kind!.Value)).Select(l => CatalogueLimit.Of(a, l)))]));
    }

    private static bool Holds(AreaLimit limit, string grade, SampleKind kind) =>
        limit.Grade is null ? kind is SampleKind.Gasoline or SampleKind.EthanolBlend : limit.Grade == grade;

    // A limit that holds at both points of compliance is listed once.
    private static IEnumerable<CatalogueLimit> On(IReadOnlyList<Area> areas, Area area, string? grade, SampleKind kind, DateOnly day) =>
        PointsOfCompliance.All
            .SelectMany(point => LimitPicker.Pick(areas, new ProductQuery(grade ?? kind.Text(), ProductState.Finished, area.Code, point, day, null, kind))
                .Limits.Select(picked => (Picked: picked, Point: point)))
            .GroupBy(found => found.Picked.Limit.Key)
            .Select(found => CatalogueLimit.Of(found.First().Picked, grade, found.Count() == 1 ? found.First().Point : null));
}
