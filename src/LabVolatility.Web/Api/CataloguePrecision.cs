using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api;

/// <summary>Finds the precision that the laboratory entered for a result.</summary>
internal static class CataloguePrecision
{
    /// <summary>The statement that fits; null where none is set. Without a known container only those made for all containers count.</summary>
    public static PrecisionStatement? Find(
        IReadOnlyList<PrecisionStatement> statements, TestMethod method, string quantity, ContainerKind? container, Volume? volume, AbsolutePressure level)
    {
        var fitting = statements.Where(s => container is not null || s.Container is null)
            .Where(s => volume is not null || s.ContainerMillilitres is null).ToList();
        return PrecisionChoice.Choose(fitting, new PrecisionQuestion(
            method.Designation, method.Edition, quantity, container ?? method.Containers[0], volume, level)).Statement;
    }
}
