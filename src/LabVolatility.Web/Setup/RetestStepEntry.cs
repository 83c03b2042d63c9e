using System.Globalization;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Setup;

/// <summary>A step of the tree as typed.</summary>
public sealed class RetestStepEntry
{
    public RetestKind Kind { get; set; } = RetestKind.MoreContainers;

    public string? Times { get; set; } = "1";

    public string? Containers { get; set; } = "1";

    public static RetestStepEntry Of(RetestStep step) => new()
    {
        Kind = step.Kind,
        Times = step.Times.ToString(CultureInfo.InvariantCulture),
        Containers = step.Kind == RetestKind.MoreContainers ? step.Containers.ToString(CultureInfo.InvariantCulture) : "1",
    };

    /// <summary>The step; a number that can't be read is 0, which the laboratory refuses.</summary>
    public RetestStep Read() => new(Kind, Number(Times), Kind == RetestKind.MoreContainers ? Number(Containers) : 0);

    private static int Number(string? text) =>
        int.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
