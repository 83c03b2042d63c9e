using System.Data.Common;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace LabVolatility.Laboratory.Records;

/// <summary>Reads the rows of a recorded table as they stand there, past the entities: any nonsense may stand in a cell.</summary>
internal static class RowReader
{
    /// <summary>Calls <paramref name="found"/> with the id and the canonical text of each row.</summary>
    public static async Task ReadAsync(LabContext lab, IEntityType entity, Action<string, string> found, CancellationToken cancellationToken)
    {
        var members = RecordedMembers.Of(entity);
        var columns = members.Members.Select(m => m.Property).Concat(members.Key).Distinct().ToList();
        var places = columns.Index().ToDictionary(c => c.Item, c => c.Index);
        await using var command = lab.Database.GetDbConnection().CreateCommand();
        command.Transaction = lab.Database.CurrentTransaction?.GetDbTransaction();
        command.CommandText = $"SELECT {string.Join(", ", columns.Select(c => $"\"{c.GetColumnName()}\""))} FROM \"{entity.GetTableName()}\"";
        await using var row = await command.ExecuteReaderAsync(cancellationToken);
        while (await row.ReadAsync(cancellationToken))
        {
            found(IdOf(lab, row, members, places), members.TextOf(m => lab.Engine.ReadCell(row, places[m.Property], m.Kind)));
        }
    }

    private static string IdOf(LabContext lab, DbDataReader row, RecordedMembers members, Dictionary<IProperty, int> places) =>
        string.Join('/', members.Key.Select(p => lab.Engine.ReadCell(row, places[p], RecordedMembers.KindOf(p)).Trim('"')));
}
