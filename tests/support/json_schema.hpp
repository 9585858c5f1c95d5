// Checks JSON against a JSON Schema (2020-12), as far as our own schemas need it: type, enum, const, required,
// properties, additionalProperties, propertyNames, items, minItems, minLength, pattern, minimum, maximum, anyOf, $ref
// into "#/$defs/...". Any other keyword is reported as a fault of the schema, so that nothing is skipped in silence.
#pragma once

#include <algorithm>
#include <fstream>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace sumpwright::tests
{

class JsonSchema
{
public:
    explicit JsonSchema(nlohmann::json root) : m_root(std::move(root)) {}
    static JsonSchema fromFile(const std::string& path)
    {
        return JsonSchema(nlohmann::json::parse(std::ifstream(path)));
    }

    // What is wrong, each with its place; empty when the document is as the schema says.
    std::vector<std::string> faultsOf(const nlohmann::json& document) const
    {
        std::vector<std::string> faults;
        check(m_root, document, "", faults);
        return faults;
    }

private:
    using json = nlohmann::json;
    using Faults = std::vector<std::string>;

    void check(const json& schema, const json& value, const std::string& at, Faults& faults) const
    {
        if (schema.is_boolean()) {
            if (!schema.get<bool>())
                faults.push_back(at + ": not allowed here");
            return;
        }
        for (const auto& [keyword, rule] : schema.items())
            checkKeyword(keyword, rule, schema, value, at, faults);
    }

    void checkKeyword(const std::string& keyword, const json& rule, const json& schema, const json& value,
                      const std::string& at, Faults& faults) const
    {
        static const std::set<std::string> remarks = {"$schema", "$id", "$defs", "$comment", "title", "description"};
        if (remarks.contains(keyword))
            return;
        if (keyword == "$ref")
            check(m_root.at(json::json_pointer(rule.get<std::string>().substr(1))), value, at, faults);
        else if (keyword == "type")
            require(isOfType(rule, value), at, "is not of type " + rule.dump(), faults);
        else if (keyword == "const")
            require(value == rule, at, "is not " + rule.dump(), faults);
        else if (keyword == "enum")
            require(std::find(rule.begin(), rule.end(), value) != rule.end(), at, "is not one of " + rule.dump(),
                    faults);
        else if (keyword == "anyOf")
            checkAnyOf(rule, value, at, faults);
        else if (!checkObject(keyword, rule, schema, value, at, faults) && !checkRest(keyword, rule, value, at, faults))
            faults.push_back("the schema has a keyword this check does not know: " + keyword);
    }

    bool checkObject(const std::string& keyword, const json& rule, const json& schema, const json& value,
                     const std::string& at, Faults& faults) const
    {
        static const std::set<std::string> known = {"required", "properties", "additionalProperties", "propertyNames"};
        if (!known.contains(keyword))
            return false;
        if (!value.is_object())
            return true;
        if (keyword == "required")
            for (const json& name : rule)
                require(value.contains(name.get<std::string>()), at, "lacks " + name.dump(), faults);
        if (keyword == "properties")
            for (const auto& [name, part] : rule.items())
                if (value.contains(name))
                    check(part, value.at(name), at + "/" + name, faults);
        for (const auto& [name, part] : value.items()) {
            if (keyword == "additionalProperties" && !schema.value("properties", json::object()).contains(name))
                check(rule, part, at + "/" + name, faults);
            if (keyword == "propertyNames")
                check(rule, json(name), at + "/" + name, faults);
        }
        return true;
    }

    bool checkRest(const std::string& keyword, const json& rule, const json& value, const std::string& at,
                   Faults& faults) const
    {
        if (keyword == "items") {
            for (std::size_t i = 0; value.is_array() && i < value.size(); ++i)
                check(rule, value[i], at + "/" + std::to_string(i), faults);
        } else if (keyword == "minItems") {
            require(!value.is_array() || value.size() >= rule.get<std::size_t>(), at, "has too few items", faults);
        } else if (keyword == "minLength") {
            require(!value.is_string() || value.get<std::string>().size() >= rule.get<std::size_t>(), at,
                    "is too short", faults);
        } else if (keyword == "pattern") {
            require(!value.is_string() ||
                        std::regex_search(value.get<std::string>(), std::regex(rule.get<std::string>())),
                    at, "does not match " + rule.dump(), faults);
        } else if (keyword == "minimum") {
            require(!value.is_number() || value.get<double>() >= rule.get<double>(), at, "is too small", faults);
        } else if (keyword == "maximum") {
            require(!value.is_number() || value.get<double>() <= rule.get<double>(), at, "is too large", faults);
        } else {
            return false;
        }
        return true;
    }

    void checkAnyOf(const json& rules, const json& value, const std::string& at, Faults& faults) const
    {
        for (const json& rule : rules) {
            Faults own;
            check(rule, value, at, own);
            if (own.empty())
                return;
        }
        faults.push_back(at + ": fits none of the choices");
    }

    static bool isOfType(const json& rule, const json& value)
    {
        if (rule.is_array())
            return std::any_of(rule.begin(), rule.end(), [&](const json& one) { return isOfType(one, value); });
        const std::string type = rule.get<std::string>();
        return (type == "object" && value.is_object()) || (type == "array" && value.is_array()) ||
               (type == "string" && value.is_string()) || (type == "number" && value.is_number()) ||
               (type == "integer" && value.is_number_integer()) || (type == "boolean" && value.is_boolean()) ||
               (type == "null" && value.is_null());
    }

    static void require(bool kept, const std::string& at, const std::string& fault, Faults& faults)
    {
        if (!kept)
            faults.push_back((at.empty() ? "the document" : at) + " " + fault);
    }

    nlohmann::json m_root;
};

} // namespace sumpwright::tests
