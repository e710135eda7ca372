using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LogBook.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Reviews : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "ReviewFault",
                table: "Visits",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<double>(
                name: "AuditShare",
                table: "Firm",
                type: "REAL",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "ReviewFault",
                table: "Visits");

            migrationBuilder.DropColumn(
                name: "AuditShare",
                table: "Firm");
        }
    }
}
