using LabVolatility.Laboratory.Certificates;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The certificates of a batch, the latest first.</summary>
public sealed partial class CertificateList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ReadCertificates.Line> Certificates { get; set; } = [];
}
