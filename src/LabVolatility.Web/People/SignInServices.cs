using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Web.People;

/// <summary>Everything about who may come in and for how long.</summary>
public static class SignInServices
{
    public const int PasswordRounds = 210_000;

    public static void AddSignIn(this IServiceCollection services, WebSettings settings)
    {
        services.AddIdentityCore<Person>(options =>
            {
                options.Lockout.MaxFailedAccessAttempts = 5;
                options.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);
            })
            .AddEntityFrameworkStores<LabContext>();
        services.Configure<PasswordHasherOptions>(options => options.IterationCount = PasswordRounds);
        services.AddAuthentication(IdentityConstants.ApplicationScheme)
            .AddCookie(IdentityConstants.ApplicationScheme, options => SignInCookie.Configure(options, settings));
        services.AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build())
            .AddRightPolicies();
        services.AddAntiforgery(options =>
        {
            options.Cookie.Name = settings.CookiesWithoutTls ? "labvolatility-form" : "__Host-labvolatility-form";
            options.Cookie.SecurePolicy = settings.CookiesWithoutTls ? CookieSecurePolicy.SameAsRequest : CookieSecurePolicy.Always;
            options.Cookie.Path = "/";
            options.SuppressXFrameOptionsHeader = true;
        });
        services.AddDataProtection().SetApplicationName("LabVolatility").PersistKeysToDbContext<LabContext>();

        services.AddCascadingAuthenticationState();
        services.AddSingleton<SessionCheck>();
        services.AddSingleton<OpenSessions>();
        services.AddSingleton<TypingKeys>();
        services.AddSingleton<TryLimits>();
        services.AddSingleton<FirstAdministratorCode>();
        services.AddSingleton<SignaturePassword>();
        services.AddScoped<PasswordSignature>();
        services.AddScoped<ISignature>(provider => provider.GetRequiredService<PasswordSignature>());
        services.AddScoped<SignIn>();
        services.AddScoped<CurrentActor>();
        services.AddScoped<CircuitSession>();
        services.AddScoped<CircuitHandler, SessionCircuitHandler>();
    }

    private static void AddRightPolicies(this AuthorizationBuilder builder)
    {
        foreach (var right in Enum.GetValues<Right>())
            builder.AddPolicy(right.ToString(), policy => policy.RequireAuthenticatedUser().RequireAssertion(c => Rights.Allow(PersonClaims.RolesOf(c.User), right)));
    }
}
