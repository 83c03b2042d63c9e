using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>The test methods and correlations.</summary>
public sealed partial class MethodsPage : LabPage
{
    private IReadOnlyList<PrecisionStatement> _inForce = [];

    public override string Title => "Methods";

    [Inject]
    private ReadPrecision Read { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<PrecisionEntry>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _inForce = await Read.Run(cancellationToken);
}
