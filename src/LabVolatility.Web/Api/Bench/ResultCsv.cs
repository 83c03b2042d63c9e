using System.Globalization;
using System.Text;

namespace LabVolatility.Web.Api.Bench;

/// <summary>Results as comma-separated text (RFC 4180), with a point in numbers.</summary>
internal static class ResultCsv
{
    public static string Write(IReadOnlyList<ResultLine> lines)
    {
        var csv = new StringBuilder("sample,grade,tank,batch,determination,method,edition,instrument,measuredAt,counts,quantity,value,reported,unit,suffix,correlation\r\n");
        foreach (var l in lines)
        {
            csv.AppendJoin(',', new[]
            {
                l.Sample, l.Grade, l.Tank, l.Batch, l.Determination.ToString(), l.Method, l.Edition, l.Instrument, l.MeasuredAt.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture),
                l.Counts ? "true" : "false", l.Quantity, l.Value.ToString(CultureInfo.InvariantCulture), l.Reported, l.Unit, l.Suffix, l.Correlation,
            }.Select(Cell)).Append("\r\n");
        }

        return csv.ToString();
    }

    // A cell that a spreadsheet would take for a formula gets an apostrophe in front.
    private static string Cell(string? text)
    {
        var plain = text is ['=' or '+' or '@' or '\t' or '\r', ..] or ['-', not (>= '0' and <= '9'), ..] ? $"'{text}" : text ?? "";
        return plain.AsSpan().IndexOfAny(",\"\r\n") < 0 ? plain : $"\"{plain.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
