using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Samples;

/// <summary>A container as typed in a form.</summary>
public sealed class ContainerRow
{
    public ContainerKind Kind { get; set; } = ContainerKind.GlassBottle;
    public string? Volume { get; set; } = "1 L";
    public string? Fill { get; set; }
    public string? Temperature { get; set; }
    public string? Seal { get; set; }

    /// <summary>"yes", "no", or blank for not looked at.</summary>
    public string? Intact { get; set; }
    public bool Leaking { get; set; }

    /// <summary>A further container like this one; what is seen on it is looked at anew.</summary>
    public ContainerRow Copy() => new() { Kind = Kind, Volume = Volume, Fill = Fill, Temperature = Temperature, Intact = Intact };

    public static ContainerRow Of(Container container) => new()
    {
        Kind = container.Kind,
        Volume = SampleWords.Volume(container.VolumeMillilitres),
        Fill = container.FillPercent is { } fill ? Rounding.Plain(fill) : null,
        Seal = container.Seal,
    };

    /// <summary>What the rows say; problems name the row's field.</summary>
    public static IReadOnlyList<ContainerRequest> Read(IReadOnlyList<ContainerRow> rows, List<Problem> problems, bool received)
    {
        var read = new List<ContainerRequest>();
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            if (!QuantityText.TryReadVolume(row.Volume, VolumeUnit.Millilitre, out var volume, out var wrong))
                problems.Add(new Problem($"/containers/{i}/containerVolume", wrong!));
            var fill = FillOf(row, i, problems);
            read.Add(new ContainerRequest(
                row.Kind, volume.In(VolumeUnit.Millilitre), fill, received ? Blank(row.Temperature) : null, Blank(row.Seal),
                received && row.Intact is "yes" or "no" ? row.Intact == "yes" : null, received && row.Leaking));
        }

        return read;
    }

    /// <summary>What departs so far, as far as the rows can be read.</summary>
    public static IReadOnlyList<string> Departures(IReadOnlyList<ContainerRow> rows) => ReceiptCondition.Departures(Read(rows, [], true));

    private static decimal? FillOf(ContainerRow row, int at, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(row.Fill))
            return null;
        if (QuantityText.TryReadNumber(row.Fill, 1m, 100m, out var fill, out var wrong))
            return fill;
        problems.Add(new Problem($"/containers/{at}/fillPercent", wrong!));
        return null;
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
