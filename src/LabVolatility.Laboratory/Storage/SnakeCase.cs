using System.Text;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Names in the database: "SampledAt" is column "sampled_at".</summary>
internal static class SnakeCase
{
    public static string Of(string name)
    {
        var text = new StringBuilder(name.Length + 4);
        for (var i = 0; i < name.Length; i++)
        {
            var startsWord = i > 0 && char.IsUpper(name[i]) && (!char.IsUpper(name[i - 1]) || (i + 1 < name.Length && char.IsLower(name[i + 1])));
            if (startsWord)
                text.Append('_');
            text.Append(char.ToLowerInvariant(name[i]));
        }

        return text.ToString();
    }

    public static void NameColumns(ModelBuilder model)
    {
        foreach (var property in model.Model.GetEntityTypes().SelectMany(e => e.GetProperties()))
            property.SetColumnName(Of(property.Name));
    }
}
