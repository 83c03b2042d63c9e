using System.Globalization;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>The samples, filtered by the address.</summary>
public sealed partial class SamplesPage : LabPage
{
    private Laboratory.Samples.SamplesPage _page = new([], null, []);
    private string? _text;
    private string? _state;
    private string? _grade;
    private string? _order;

    public override string Title => "Samples";

    public override IReadOnlyList<KeyHint> KeyHints => ListKeys.Hints;

    [SupplyParameterFromQuery(Name = "find")]
    private string? Find { get; set; }

    [SupplyParameterFromQuery(Name = "state")]
    private string? State { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    private string? Grade { get; set; }

    [SupplyParameterFromQuery(Name = "order")]
    private string? Order { get; set; }

    /// <summary>Where the page before ended: ticks of time, a dot, the number.</summary>
    [SupplyParameterFromQuery(Name = "after")]
    private string? After { get; set; }

    [Inject]
    private ReadSamples Read { get; set; } = null!;

    private bool IsFiltered => new[] { Find, State, Grade, Order }.Any(f => !string.IsNullOrEmpty(f));

    protected override void TakeAddress() => (_text, _state, _grade, _order) = (Find, State, Grade, Order);

    protected override bool Concerns(Notice notice) => notice.ChangesMeasurements();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _page = await Read.Run(
            new SamplesFilter(
                Find, Enum.TryParse<SampleState>(State, ignoreCase: true, out var state) ? state : null, Grade, Order == "deadline", Cursor(After)),
            cancellationToken);
    }

    private static SampleCursor? Cursor(string? text) =>
        text?.Split('.', 2) is [var at, var number] && long.TryParse(at, NumberStyles.None, CultureInfo.InvariantCulture, out var ticks)
            && ticks <= DateTimeOffset.MaxValue.Ticks
            ? new SampleCursor(new DateTimeOffset(ticks, TimeSpan.Zero), number)
            : null;

    private void OpenSample(ScannedSample found) => Addresses.NavigateTo($"/samples/{found.Number}");

    private void Refilter() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters("/samples", Parameters(null)));

    private string Address(SampleCursor? after) => Addresses.GetUriWithQueryParameters("/samples", Parameters(after));

    private Dictionary<string, object?> Parameters(SampleCursor? after) => new()
    {
        ["find"] = Blank(_text),
        ["state"] = Blank(_state),
        ["grade"] = Blank(_grade),
        ["order"] = Blank(_order),
        ["after"] = after is null ? null : string.Create(CultureInfo.InvariantCulture, $"{after.At.UtcTicks}.{after.Number}"),
    };

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
