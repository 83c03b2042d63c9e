using System.Globalization;
using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>One row of a table as published, read by column name.</summary>
internal sealed record PublishedRow(string[] Columns, string[] Cells)
{
    public string Text(string column) => Cells[Array.IndexOf(Columns, column)];

    public decimal Number(string column) => decimal.Parse(Text(column), CultureInfo.InvariantCulture);

    public decimal? NumberOrNone(string column) => Text(column).Length == 0 ? null : Number(column);

    public FactStatus Status(string column) =>
        FactStatuses.TryParse(Text(column), out var status)
            ? status
            : throw new InvalidDataException($"\"{Text(column)}\" is no status of a fact.");
}
