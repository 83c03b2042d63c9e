using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components.Rendering;

namespace LabVolatility.Web.Tests.Layout;

/// <summary>A page about tanks that counts how often it is read.</summary>
public sealed class ProbePage : LabPage
{
    public override string Title => "Probe";

    public int Readings { get; private set; }

    public bool Fails { get; set; }

    protected override bool Concerns(Notice notice) => notice.Changes<Tank>();

    protected override Task LoadAsync(CancellationToken cancellationToken)
    {
        Readings++;
        return Fails ? throw new InvalidOperationException("the page's own fault") : Task.CompletedTask;
    }

    protected override void BuildRenderTree(RenderTreeBuilder builder) => builder.AddContent(0, News);
}
