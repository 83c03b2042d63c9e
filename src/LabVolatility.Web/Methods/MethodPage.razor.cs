using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>One test method: its figures, correlations, precision, handling and cautions.</summary>
public sealed partial class MethodPage : LabPage
{
    private TestMethod? _method;
    private IReadOnlyList<PrecisionLine> _lines = [];
    private IReadOnlyList<CorrelationLine> _correlations = [];
    private Correlation? _own;

    public override string Title => _method?.Citation ?? Designation;

    [Parameter]
    public string Designation { get; set; } = "";

    [Inject]
    private ReadPrecisionEntries Read { get; set; } = null!;

    [Inject]
    private ReadCorrelationEntries ReadCorrelations { get; set; } = null!;

    [Inject]
    private ReadOwnCorrelation Own { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<PrecisionEntry>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _method = MethodAddress.Find(Designation);
        if (_method is null)
        {
            Missing = $"There is no test method {Designation} in this laboratory.";
            return;
        }

        _lines = await Read.Run(_method.Designation, cancellationToken);
        if (!Correlations.AreOwn(_method))
            return;
        _correlations = await ReadCorrelations.Run(_method.Designation, cancellationToken);
        _own = await Own.Run(_method, cancellationToken);
    }
}
