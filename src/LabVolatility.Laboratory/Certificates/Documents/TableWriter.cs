using PdfSharp.Drawing;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Draws a table with hairlines; its head is repeated on each page that it reaches.</summary>
internal sealed class TableWriter
{
    private const double Gap = 8;
    private const double Above = 2;
    private const double Below = 2;

    private readonly PageFlow _flow;
    private readonly IReadOnlyList<TableColumn> _columns;
    private readonly double[] _lefts;
    private readonly double[] _widths;
    private readonly double _line;

    private TableWriter(PageFlow flow, IReadOnlyList<TableColumn> columns)
    {
        (_flow, _columns) = (flow, columns);
        _line = TypeFaces.LineHeight(flow.Faces.Table);
        var shares = columns.Sum(c => c.Share);
        var open = PageFlow.Width - (Gap * (columns.Count - 1));
        _widths = [.. columns.Select(c => open * c.Share / shares)];
        _lefts = [.. columns.Select((_, at) => PageFlow.Left + _widths.Take(at).Sum() + (Gap * at))];
    }

    public static void Write(
        PageFlow flow, IReadOnlyList<TableColumn> columns, IEnumerable<IReadOnlyList<TableCell>> rows)
    {
        var table = new TableWriter(flow, columns);
        var first = true;
        foreach (var row in rows)
        {
            var lines = table.Break(row);
            if (first)
                table.Begin(lines);
            first = false;
            table.Row(lines, row);
        }

        flow.Top += 2;
    }

    private IReadOnlyList<string>[] Break(IReadOnlyList<TableCell> row) =>
        [.. row.Select((cell, at) => _flow.Ruler.Lines(cell.Text, FontOf(cell), _widths[at]))];

    private double HeightOf(IReadOnlyList<string>[] lines) => Above + (lines.Max(l => l.Count) * _line) + Below;

    private void Begin(IReadOnlyList<string>[] lines)
    {
        var head = HeadLines();
        if (HeightOf(head) + HeightOf(lines) <= PageFlow.WholePage)
            _flow.Need(HeightOf(head) + HeightOf(lines));
        Head(head);
    }

    private IReadOnlyList<string>[] HeadLines() =>
        [.. _columns.Select((c, at) => _flow.Ruler.Lines(c.Title, _flow.Faces.TableBold, _widths[at]))];

    private void Head(IReadOnlyList<string>[] head)
    {
        _flow.Rule();
        Draw(head, 0, head.Max(h => h.Count), _ => _flow.Faces.TableBold);
        _flow.Rule();
    }

    private void Row(IReadOnlyList<string>[] lines, IReadOnlyList<TableCell> row)
    {
        var count = lines.Max(l => l.Count);
        var head = HeadLines();
        if (HeightOf(lines) > _flow.Room && HeightOf(lines) + HeightOf(head) <= PageFlow.WholePage)
            TurnPage(head);
        for (var done = 0; done < count;)
        {
            if (_flow.Room < Above + _line + Below)
                TurnPage(head);
            var fitting = Math.Min(count - done, (int)((_flow.Room - Above - Below) / _line));
            Draw(lines, done, fitting, at => FontOf(row[at]));
            done += fitting;
            _flow.Rule();
        }
    }

    private void TurnPage(IReadOnlyList<string>[] head)
    {
        _flow.Need(_flow.Room + 1);
        Head(head);
    }

    private void Draw(IReadOnlyList<string>[] lines, int from, int count, Func<int, XFont> fontOf)
    {
        _flow.Top += Above;
        for (var line = from; line < from + count; line++)
        {
            for (var at = 0; at < lines.Length; at++)
                if (line < lines[at].Count)
                    Put(lines[at][line], fontOf(at), at);
            _flow.Top += _line;
        }

        _flow.Top += Below;
    }

    private void Put(string text, XFont font, int column)
    {
        if (_columns[column].RightAligned)
            _flow.Put(text, font, _lefts[column] + _widths[column], XStringFormats.TopRight);
        else
            _flow.Put(text, font, _lefts[column]);
    }

    private XFont FontOf(TableCell cell) => cell.Bold ? _flow.Faces.TableBold : _flow.Faces.Table;
}
