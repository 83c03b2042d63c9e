using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>What a method takes, how it is set and what it reports.</summary>
public sealed partial class MethodFacts : ComponentBase
{
    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;
}
