namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The shore tanks of a cargo: one vapour pressure each, and the limits that applied.</summary>
internal static class CargoTables
{
    public static void Write(PageFlow flow, CargoContent content, LocalTimes times)
    {
        flow.Heading("Vapour pressure by shore tank");
        TableWriter.Write(
            flow,
            [
                new("Shore tank, batch", 2.6), new("Vapour pressure", 1.9, RightAligned: true), new("Test method, correlation", 2.6),
                new("Samples and levels", 2.6), new("Sampled, measured", 2.2), new("Decision on the batch", 2.6),
            ],
            content.Tanks.Select(tank => Tank(tank, times)));
        flow.Paragraph(CargoPdf.NoMean, flow.Faces.BodyBold);

        flow.Heading("Limits that applied, tank by tank");
        LimitTable.Write(flow, [.. content.Tanks.SelectMany(t => t.Limits.Select(limit => ($"Tank {t.Tank}", limit)))]);
        if (content.Remarks is null)
            return;
        flow.Heading("Remarks");
        flow.Paragraph(content.Remarks, flow.Faces.Body);
    }

    private static IReadOnlyList<TableCell> Tank(CargoTankLine tank, LocalTimes times) =>
    [
        TableCell.Of(tank.Tank, $"batch {tank.Batch}", tank.Grade, tank.Volume) with { Bold = true },
        TableCell.Of($"{tank.Quantity} {tank.Reported}{tank.Suffix} {tank.Unit}", tank.Suffix == "H" ? "hazy sample" : null) with { Bold = true },
        TableCell.Of(tank.Method, tank.Correlation),
        TableCell.Of([.. tank.Samples.Select(s => $"{s.Number} ({s.Level})")]),
        TableCell.Of($"sampled {times.At(tank.Samples.Max(s => s.SampledAt))}", $"measured {times.At(tank.MeasuredAt)}"),
        TableCell.Of(tank.Decision, tank.DecidedBy, times.At(tank.DecidedAt)),
    ];
}
