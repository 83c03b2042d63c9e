using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>One cargo certificate: its tanks as certified, and what it no longer covers.</summary>
public sealed partial class CargoCertificatePage : LabPage
{
    private CargoSheet? _sheet;

    public override string Title => $"Cargo certificate {Number}";

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private ReadCargoes Read { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.ChangesBatches();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _sheet = await Read.One(Number, cancellationToken);
        Missing = _sheet is null ? $"There is no cargo certificate {Number}." : null;
    }
}
