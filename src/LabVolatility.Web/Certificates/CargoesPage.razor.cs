using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>The cargo certificates, each by its latest revision.</summary>
public sealed partial class CargoesPage : LabPage
{
    private CargoesFound _page = new([], null);
    private string? _text;

    public override string Title => "Cargo";

    [SupplyParameterFromQuery(Name = "find")]
    private string? Find { get; set; }

    /// <summary>The last number of the page before.</summary>
    [SupplyParameterFromQuery(Name = "after")]
    private string? After { get; set; }

    [Inject]
    private ReadCargoes Read { get; set; } = null!;

    protected override void TakeAddress() => _text = Find;

    protected override bool Concerns(Notice notice) => notice.ChangesBatches();

    protected override async Task LoadAsync(CancellationToken cancellationToken) =>
        _page = await Read.Run(Find, After, cancellationToken);

    private void Refilter() => Addresses.NavigateTo(Address(null));

    private string Address(string? after) => Addresses.GetUriWithQueryParameters(CargoAddress.All, new Dictionary<string, object?>
    {
        ["find"] = string.IsNullOrWhiteSpace(_text) ? null : _text.Trim(),
        ["after"] = after,
    });
}
