using System.Globalization;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;
using Found = LabVolatility.Laboratory.Batches.BatchesPage;

namespace LabVolatility.Web.Batches;

/// <summary>The batches, filtered by the address.</summary>
public sealed partial class BatchesPage : LabPage
{
    private Found _page = new([], null, []);
    private string? _text;
    private string? _standing;
    private string? _grade;
    private string? _order;

    public override string Title => "Batches";

    public override IReadOnlyList<KeyHint> KeyHints => ListKeys.Hints;

    [SupplyParameterFromQuery(Name = "find")]
    private string? Find { get; set; }

    [SupplyParameterFromQuery(Name = "standing")]
    private string? Standing { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    private string? Grade { get; set; }

    [SupplyParameterFromQuery(Name = "order")]
    private string? Order { get; set; }

    /// <summary>Where the page before ended: ticks of time, a dot, the number.</summary>
    [SupplyParameterFromQuery(Name = "after")]
    private string? After { get; set; }

    [Inject]
    private ReadBatches Read { get; set; } = null!;

    private BatchStanding? Wanted =>
        Enum.TryParse<BatchStanding>(Standing, ignoreCase: true, out var standing) && Enum.IsDefined(standing) ? standing : null;

    private bool IsFiltered => new[] { Find, Standing, Grade, Order }.Any(f => !string.IsNullOrEmpty(f));

    protected override void TakeAddress() => (_text, _standing, _grade, _order) = (Find, Wanted?.ToString(), Grade, Order);

    protected override bool Concerns(Notice notice) => notice.ChangesBatches() || notice.ChangesMeasurements();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _page = await Read.Run(new BatchesFilter(Find, Wanted, Grade, Order == "need", Cursor(After)), cancellationToken);
    }

    private static BatchCursor? Cursor(string? text) =>
        text?.Split('.', 2) is [var at, var number] && long.TryParse(at, NumberStyles.None, CultureInfo.InvariantCulture, out var ticks)
            && ticks <= DateTimeOffset.MaxValue.Ticks
            ? new BatchCursor(new DateTimeOffset(ticks, TimeSpan.Zero), number)
            : null;

    private void Refilter() => Addresses.NavigateTo(Address(null));

    private string Address(BatchCursor? after) => Addresses.GetUriWithQueryParameters("/batches", new Dictionary<string, object?>
    {
        ["find"] = Blank(_text),
        ["standing"] = Blank(_standing)?.ToLowerInvariant(),
        ["grade"] = Blank(_grade),
        ["order"] = Blank(_order),
        ["after"] = after is null ? null : string.Create(CultureInfo.InvariantCulture, $"{after.At.UtcTicks}.{after.Number}"),
    });

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
