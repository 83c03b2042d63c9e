using System.Globalization;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;
using Found = LabVolatility.Laboratory.Records.RecordsPage;

namespace LabVolatility.Web.Records;

/// <summary>The audit records: filter in the address, a page of fifty at a time, newest first.</summary>
public sealed partial class RecordsPage
{
    private RecordsEntry _entry = new();
    private IReadOnlyList<Problem> _problems = [];
    private IReadOnlyList<string> _subjects = [];
    private Found _page = new([], null);

    public override string Title => "Records";

    public override IReadOnlyList<KeyHint> KeyHints => ListKeys.Hints;

    [SupplyParameterFromQuery]
    public string? Text { get; set; }

    [SupplyParameterFromQuery]
    public string? Subject { get; set; }

    [SupplyParameterFromQuery]
    public string? SubjectId { get; set; }

    [SupplyParameterFromQuery]
    public string? From { get; set; }

    [SupplyParameterFromQuery]
    public string? Until { get; set; }

    [SupplyParameterFromQuery]
    public long? Before { get; set; }

    [Inject]
    private ReadRecords Read { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => Before is null;

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _entry = new RecordsEntry { Text = Text, Subject = Subject, SubjectId = SubjectId, From = From, Until = Until };
        _subjects = Read.Subjects();
        var problems = new List<Problem>();
        var filter = new RecordsFilter(Text, Subject, SubjectId?.Trim(), From: Midnight("/from", From, 0, problems), Until: Midnight("/until", Until, 1, problems));
        _problems = problems;
        _page = problems.Count > 0 ? new Found([], null) : await Read.Run(filter, Before, cancellationToken);
    }

    private DateTimeOffset? Midnight(string field, string? typed, int daysLater, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (!DateOnly.TryParseExact(typed.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            problems.Add(new Problem(field, $"\"{typed}\" is no date. Give it as 2026-11-25."));
            return null;
        }

        var local = day.AddDays(daysLater).ToDateTime(TimeOnly.MinValue);
        return new DateTimeOffset(local, Clock.Zone.GetUtcOffset(local));
    }

    private void SearchAsync(RecordsEntry entry)
    {
        _entry = entry;
        Addresses.NavigateTo(AddressOf(null));
    }

    private string AddressOf(long? before) => Addresses.GetUriWithQueryParameters("/records", new Dictionary<string, object?>
    {
        ["text"] = Blank(_entry.Text),
        ["subject"] = Blank(_entry.Subject),
        ["subjectId"] = Blank(_entry.SubjectId),
        ["from"] = Blank(_entry.From),
        ["until"] = Blank(_entry.Until),
        ["before"] = before,
    });

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
