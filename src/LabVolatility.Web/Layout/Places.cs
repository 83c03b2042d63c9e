using System.Reflection;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>The places, in the order of the work; a place is shown once it has a page.</summary>
public static class Places
{
    private static readonly HashSet<string> Routes =
        [.. typeof(Places).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>(inherit: false)).Select(r => r.Template)];

    public static IReadOnlyList<Place> All { get; } =
    [
        new("Today", "/today", Right.Read),
        new("Samples", "/samples", Right.Read),
        new("Bench", "/bench", Right.Read),
        new("Instruments", "/instruments", Right.Read),
        new("Batches", "/batches", Right.Read),
        new("Trends", "/trends", Right.Read),
        new("Blending", "/blending", Right.Read),
        new("Limits", "/limits", Right.Read),
        new("Methods", "/methods", Right.Read),
        new("Records", "/records", Right.Read),
        new("Setup", "/setup", Right.Administer),
        new("Setup", "/setup/grades", Right.ManageReferenceData),
    ];

    /// <summary>What a person with these roles sees.</summary>
    public static IEnumerable<Place> For(Roles roles) => All.Where(p => Rights.Allow(roles, p.Right) && Routes.Contains(p.Path)).DistinctBy(p => p.Name);

    /// <summary>Where a person's work is: the analyst at the bench, all others at Today.</summary>
    public static string LandingOf(Roles roles)
    {
        var seen = For(roles).Select(p => p.Path).ToList();
        var wanted = roles == Roles.Analyst ? "/bench" : roles == Roles.Administrator ? "/setup" : "/today";
        return seen.Contains(wanted) ? wanted : seen.FirstOrDefault() ?? "/account";
    }
}
