using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;

namespace LabVolatility.Web.Layout;

/// <summary>A page that failed says so with the reference of its log lines; the rail stays.</summary>
public sealed class FaultBoundary : ErrorBoundaryBase
{
    [Inject]
    private CircuitSession Session { get; set; } = null!;

    [Inject]
    private ILogger<FaultBoundary> Log { get; set; } = null!;

    protected override Task OnErrorAsync(Exception exception)
    {
        Log.LogError(exception, "A page failed, reference {Reference}", Session.Reference);
        return Task.CompletedTask;
    }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (CurrentException is null)
        {
            builder.AddContent(0, ChildContent);
            return;
        }

        builder.OpenComponent<FaultPanel>(1);
        builder.AddComponentParameter(2, nameof(FaultPanel.Reference), Session.Reference);
        builder.CloseComponent();
    }
}
