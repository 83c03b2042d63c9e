using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.People;

/// <summary>What an account must have before it is opened.</summary>
internal static class PersonRules
{
    private const int LongestUserName = 40;
    private const int LongestFullName = 100;

    public static IReadOnlyList<Problem> Problems(NewPerson person)
    {
        var problems = new List<Problem>();
        if (!IsUserName(person.UserName))
            problems.Add(new Problem("/userName", $"A sign-in name has 3 to {LongestUserName} of a-z, 0-9, point and hyphen, and begins with a letter, for example \"m.solberg\"."));
        if (string.IsNullOrWhiteSpace(person.FullName) || person.FullName.Trim().Length is < 2 or > LongestFullName)
            problems.Add(new Problem("/fullName", $"A full name has 2 to {LongestFullName} characters: it stands in records and on certificates."));
        if (person.Roles == Roles.None && !person.IsService)
            problems.Add(new Problem("/roles", "A person has at least one role."));
        return problems;
    }

    private static bool IsUserName(string? name) =>
        name is { Length: >= 3 and <= LongestUserName }
        && char.IsAsciiLetterLower(name[0])
        && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c is '.' or '-');
}
