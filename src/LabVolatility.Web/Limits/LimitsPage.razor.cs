using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>All areas with what is in force today, and what applies to a product then and there.</summary>
public sealed partial class LimitsPage : LabPage
{
    private LimitsSheet? _sheet;
    private AppliesQuestion _question = new();
    private LimitPick? _pick;
    private IReadOnlyList<Problem> _problems = [];
    private IReadOnlyList<AreaLine> _lines = [];
    private string? _find;
    private string? _whose;
    private string? _standing;
    private string? _known;

    public override string Title => "Limits";

    public override IReadOnlyList<KeyHint> KeyHints => ListKeys.Hints;

    [SupplyParameterFromQuery(Name = "find")]
    private string? Find { get; set; }

    [SupplyParameterFromQuery(Name = "whose")]
    private string? Whose { get; set; }

    [SupplyParameterFromQuery(Name = "standing")]
    private string? WithStanding { get; set; }

    [SupplyParameterFromQuery(Name = "known")]
    private string? Known { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    private string? Grade { get; set; }

    [SupplyParameterFromQuery(Name = "state")]
    private string? State { get; set; }

    [SupplyParameterFromQuery(Name = "area")]
    private string? Area { get; set; }

    [SupplyParameterFromQuery(Name = "point")]
    private string? Point { get; set; }

    [SupplyParameterFromQuery(Name = "date")]
    private string? Date { get; set; }

    [SupplyParameterFromQuery(Name = "ethanol")]
    private string? Ethanol { get; set; }

    [Inject]
    private ReadLimits Read { get; set; } = null!;

    private bool IsFiltered => new[] { Find, Whose, WithStanding, Known }.Any(f => !string.IsNullOrEmpty(f));

    protected override void TakeAddress()
    {
        (_find, _whose, _standing, _known) = (Find, Whose, WithStanding, Known);
        _question = Asked();
    }

    protected override bool Concerns(Notice notice) => notice.ChangesLimits() || notice.Changes<Grade>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _sheet = await Read.Run(cancellationToken);
        _lines = [.. AreaLine.Of(_sheet.Areas, Clock.Today).Where(Fits)];
        (_pick, _problems) = (null, []);
        var question = Asked();
        if (question.Asked && question.Read(_sheet.Grades, out _problems) is { } query)
            _pick = LimitPicker.Pick(_sheet.Areas, query);
    }

    private AppliesQuestion Asked() => new()
    {
        Grade = Grade,
        State = State ?? ProductState.Finished.Text(),
        Area = Area,
        Point = Point ?? PointOfCompliance.Terminal.Text(),
        Date = Date ?? LimitWords.Day(Clock.Today),
        Ethanol = Ethanol,
    };

    private bool Fits(AreaLine line) =>
        (string.IsNullOrWhiteSpace(Find) || line.Holds(Find.Trim()))
        && (string.IsNullOrEmpty(Whose) || line.Ships == (Whose == "ships"))
        && (string.IsNullOrEmpty(WithStanding) || line.Standings.Any(s => s.Text() == WithStanding))
        && (string.IsNullOrEmpty(Known) || line.Area.Limits.Any(l => l.Limit.Status.Text() == Known) || line.Status.Text() == Known);

    private void Ask()
    {
        if (!_question.Asked)
            _problems = [new Problem("/area", "Pick the area where the product will be used.")];
        else
            Go();
    }

    private void Refilter() => Go();

    private void Go() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters("/limits", new Dictionary<string, object?>(
        _question.Asked ? _question.Parameters : new Dictionary<string, object?>())
    {
        ["find"] = Blank(_find),
        ["whose"] = Blank(_whose),
        ["standing"] = Blank(_standing),
        ["known"] = Blank(_known),
    }));

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
