using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>Results against the catalogue, as a program asks it.</summary>
internal sealed record CatalogueQuestion(ProductQuery Product, IReadOnlyList<MeasuredResult> Results, DecisionRule Rule, decimal Confidence)
{
    /// <summary>Null where the request breaks rules.</summary>
    public static CatalogueQuestion? Read(Given body, Mistakes mistakes, KnownCatalogue catalogue)
    {
        var area = FindArea(body["area"], catalogue);
        var kind = FindKind(body["grade"], catalogue);
        var point = FindPoint(body["pointOfCompliance"], area);
        var offered = new OfferedResults(catalogue);
        var results = body["results"].Items.Select(offered.Read).ToList();
        if (mistakes.Any || area is null || kind is null)
            return null;
        _ = ProductStates.TryParse(body["state"].Text, out var state);
        _ = DecisionRules.TryParse(body["rule"].Text, out var rule);
        var product = new ProductQuery(
            body["grade"].Text!, state, area.Code, point, body["date"].Date!.Value, body["ethanolPercent"].Number, kind.Value);
        return new CatalogueQuestion(product, [.. results.OfType<MeasuredResult>()], rule, body["confidence"].Number ?? 0.95m);
    }

    private static Area? FindArea(Given given, KnownCatalogue catalogue)
    {
        var area = catalogue.Areas.FirstOrDefault(a => a.Code == given.Text);
        if (area is null && given.Text is not null)
            given.Refuse($"There is no such area; GET {Interface.BasePath}/catalogue/areas lists them: {string.Join(", ", catalogue.Areas.Select(a => a.Code))}.");
        return area;
    }

    // "gasoline" says what it is; a code of the laboratory's says more: its own limits hold too.
    private static SampleKind? FindKind(Given given, KnownCatalogue catalogue)
    {
        if (SampleKinds.TryParse(given.Text, out var kind))
            return kind;
        if (catalogue.Grades.FirstOrDefault(g => g.Code == given.Text) is { } grade)
            return grade.Kind;
        if (given.Text is not null)
            given.Refuse($"There is no such grade. It is {string.Join(", ", SampleKinds.All.Select(k => k.Text()))}, or a grade of the laboratory.");
        return null;
    }

    private static PointOfCompliance FindPoint(Given given, Area? area)
    {
        if (PointsOfCompliance.TryParse(given.Text, out var point))
            return point;
        var tellsApart = area is not null && (area.Calendar.Any(w => w.Point is not null) || area.Limits.Any(l => l.Point is not null));
        if (tellsApart && !given.IsThere)
            given.Refuse($"{area!.Code} has other dates or limits at the terminal and at retail: state which.");
        return PointOfCompliance.Terminal;
    }
}
