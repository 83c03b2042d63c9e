using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Storage;

/// <summary>The tables that sign-in and key protection bring along, under names like ours.</summary>
internal static class IdentityTables
{
    public static void Configure(ModelBuilder builder)
    {
        builder.Entity<IdentityUserClaim<Guid>>().ToTable("person_claims");
        builder.Entity<IdentityUserLogin<Guid>>().ToTable("person_logins");
        builder.Entity<IdentityUserToken<Guid>>().ToTable("person_tokens");
        builder.Entity<DataProtectionKey>().ToTable("data_protection_keys");
    }
}
