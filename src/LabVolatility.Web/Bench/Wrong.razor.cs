using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>What is wrong with the field above, if anything.</summary>
public sealed partial class Wrong : ComponentBase
{
    [Parameter]
    public string? Message { get; set; }
}
