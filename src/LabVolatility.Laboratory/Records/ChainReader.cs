using System.Data.Common;
using System.Text;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Records;

/// <summary>Walks the chain from its first record: numbers without a gap, each hash over its record and the hash before.</summary>
/// <remarks>Reads cells, not entities: a cell that holds nonsense is a finding, no failure.</remarks>
internal sealed class ChainReader(Findings findings)
{
    private long _expected = 1;
    private string _previous = Chain.Genesis;

    public long Count { get; private set; }

    public string? Head => Count == 0 ? null : _previous;

    public LastTexts Last { get; } = new();

    public async Task WalkAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var entity = lab.Model.FindEntityType(typeof(AuditRecord)) ?? throw new InvalidOperationException("The model has no audit records.");
        var members = RecordedMembers.Of(entity).Members;
        await using var command = lab.Database.GetDbConnection().CreateCommand();
        command.Transaction = lab.Database.CurrentTransaction?.GetDbTransaction();
        command.CommandText = $"SELECT {string.Join(", ", members.Select(m => $"\"{m.Property.GetColumnName()}\""))} FROM audit_records ORDER BY sequence";
        await using var row = await command.ExecuteReaderAsync(cancellationToken);
        var places = members.Index().ToDictionary(m => m.Item.Property.Name, m => m.Index);
        while (await row.ReadAsync(cancellationToken))
        {
            var content = new StringBuilder("{");
            foreach (var (place, member) in members.Index().Where(m => m.Item.Property.Name != nameof(AuditRecord.Hash)))
                CanonicalText.AppendMember(content, member.Name, lab.Engine.ReadCell(row, place, member.Kind));
            Step(row, places, content.Append('}').ToString());
        }
    }

    private void Step(DbDataReader row, Dictionary<string, int> places, string content)
    {
        var sequence = row.GetInt64(places[nameof(AuditRecord.Sequence)]);
        var hash = Raw(nameof(AuditRecord.Hash)) ?? "";
        if (sequence != _expected)
            findings.AddBroken(sequence, $"Audit records {_expected} to {sequence - 1} are missing.");
        if (Raw(nameof(AuditRecord.PreviousHash)) != _previous)
            findings.AddBroken(sequence, $"Audit record {sequence} does not follow the record before it.");
        if (hash != Chain.HashOf(content))
            findings.AddBroken(sequence, $"Audit record {sequence} was changed: its hash is not that of what it says.");
        Last.Set(Raw(nameof(AuditRecord.Subject)) ?? "", Raw(nameof(AuditRecord.SubjectId)) ?? "", Raw(nameof(AuditRecord.After)));
        _expected = sequence + 1;
        _previous = hash;
        Count++;

        string? Raw(string name) => row.GetValue(places[name]) as string;
    }
}
